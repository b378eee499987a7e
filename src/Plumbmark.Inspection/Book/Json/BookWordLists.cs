using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>The words of a book page in a file.</summary>
public static class BookWordLists
{
    /// <summary>What a figure is about.</summary>
    public static WordList<SubjectKind> Kinds { get; } =
        new(
            ("length", SubjectKind.Length),
            ("plan", SubjectKind.Plan),
            ("direct", SubjectKind.Direct),
            ("along", SubjectKind.Along),
            ("across", SubjectKind.Across),
            ("rise", SubjectKind.Rise),
            ("station", SubjectKind.Station),
            ("side", SubjectKind.Side),
            ("height", SubjectKind.Height),
            ("part", SubjectKind.Part),
            ("named", SubjectKind.Named)
        );

    internal static LengthSense? SenseOf(SubjectKind kind) =>
        kind switch
        {
            SubjectKind.Length => LengthSense.Unsaid,
            SubjectKind.Plan => LengthSense.Plan,
            SubjectKind.Direct => LengthSense.Direct,
            SubjectKind.Along => LengthSense.Along,
            SubjectKind.Across => LengthSense.Across,
            SubjectKind.Rise => LengthSense.Rise,
            _ => null,
        };

    internal static Ordinate? OrdinateOf(SubjectKind kind) =>
        kind switch
        {
            SubjectKind.Station => Ordinate.Station,
            SubjectKind.Side => Ordinate.Side,
            SubjectKind.Height => Ordinate.Height,
            _ => null,
        };

    internal static SubjectKind KindOf(BookSubject subject) =>
        Enum.GetValues<SubjectKind>()
            .First(k =>
                subject.Match(
                    b => SenseOf(k) == b.Sense,
                    a => OrdinateOf(k) == a.Ordinate,
                    _ => k == SubjectKind.Part,
                    _ => k == SubjectKind.Named
                )
            );
}
