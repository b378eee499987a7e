using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Language;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>The rows of the levelling form: what is kept, or what was typed, and one row more to write in.</summary>
/// <param name="Stands">A row for each stand.</param>
/// <param name="Floor">A row for each place of the floor.</param>
/// <param name="PlumbLength">The length of the level held to the plumb line.</param>
/// <param name="PlumbGap">The gap at its foot.</param>
public sealed record LevelRows(IReadOnlyList<LevelRows.Row> Stands, IReadOnlyList<LevelRows.Row> Floor, string PlumbLength, string PlumbGap)
{
    /// <summary>As many rows as are read from a form at most.</summary>
    public const int Most = 24;

    private const int UsualStands = 4;

    /// <summary>One row; every field as typed.</summary>
    /// <param name="Name">The stand's name; empty for a place of the floor.</param>
    /// <param name="X">How far forward.</param>
    /// <param name="Y">How far to the left.</param>
    /// <param name="Height">What the level shows.</param>
    /// <param name="Should">What it should show.</param>
    public sealed record Row(string Name, string X, string Y, string Height, string Should)
    {
        internal static Row Empty { get; } = new("", "", "", "", "");
    }

    /// <summary>The rows as they were sent.</summary>
    public static LevelRows Sent(PageRequest request) =>
        new(Sent(request, "stand", UsualStands), Sent(request, "floor", 1), request.Field("plumb-length"), request.Field("plumb-gap"));

    /// <summary>The rows as they are kept, with four corners to begin with.</summary>
    public static LevelRows Kept(CarFile car)
    {
        var level = car.Level ?? new LevelSection([], []);
        var stands = level.Stands.Select(s => new Row(s.Id, s.X.AsTyped, s.Y.AsTyped, s.Height.AsTyped, s.Should?.AsTyped ?? "")).ToList();
        if (stands.Count < UsualStands)
        {
            stands.AddRange(Corners(car).Where(c => stands.TrueForAll(s => s.Name != c.Name)).Take(UsualStands - stands.Count));
        }

        return new LevelRows(
            [.. stands, Row.Empty],
            [.. level.Floor.Select(f => new Row("", f.X.AsTyped, f.Y.AsTyped, f.Height.AsTyped, "")), Row.Empty, Row.Empty],
            level.Plumb?.Length.AsTyped ?? "",
            level.Plumb?.Gap.AsTyped ?? ""
        );
    }

    /// <summary>Four stands under the ends of the frame as sketched, to be put right by who stands there.</summary>
    private static IEnumerable<Row> Corners(CarFile car)
    {
        var display = ShownLengths.Of(car);
        var places = car
            .Frame.Points.Select(p => p.Sketch ?? p.Nominal)
            .OfType<Place>()
            .Where(p => p is { X: not null, Y: not null })
            .ToList();
        var (front, rear) = places.Count == 0 ? (0, 0) : (places.Max(p => p.X!.Value.Metres), places.Min(p => p.X!.Value.Metres));
        // Stands go under the straight of the rails, not under the horns: a tenth of the length in from each end.
        var inset = (front - rear) / 10;
        var half = places.Count == 0 ? 0 : places.Min(p => Math.Abs(p.Y!.Value.Metres));
        string Text(double metres) => places.Count == 0 ? "" : display.Number(metres);
        yield return new Row(Inspection.Language.Texts.Say("level.rear-left"), Text(rear + inset), Text(half), "", "");
        yield return new Row(Inspection.Language.Texts.Say("level.rear-right"), Text(rear + inset), Text(-half), "", "");
        yield return new Row(Inspection.Language.Texts.Say("level.front-left"), Text(front - inset), Text(half), "", "");
        yield return new Row(Inspection.Language.Texts.Say("level.front-right"), Text(front - inset), Text(-half), "", "");
    }

    private static IReadOnlyList<Row> Sent(PageRequest request, string kind, int least)
    {
        string Field(int i, string name) => request.Field($"{kind}-{i}-{name}");
        var rows = Enumerable
            .Range(0, Most)
            .Select(i => new Row(Field(i, "name"), Field(i, "x"), Field(i, "y"), Field(i, "height"), Field(i, "should")))
            .ToList();
        return [.. rows.Take(Math.Max(least, rows.FindLastIndex(r => r != Row.Empty) + 1))];
    }
}
