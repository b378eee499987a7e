using Plumbmark.Inspection.Car;

namespace Plumbmark.Testing;

/// <summary>Six invented repairs as car files, made from the geometry that each states; see Stories/README.md.</summary>
public static class Stories
{
    /// <summary>A tape held at its 1 in mark: one diagonal an inch too long.</summary>
    public const string TheInch = "1-the-inch";

    /// <summary>One front horn pushed in and down.</summary>
    public const string OneHorn = "2-one-horn";

    /// <summary>The same horn jacked out again.</summary>
    public const string OneHornAfter = "2-one-horn-after";

    /// <summary>Diagonals that agree, and no height taken.</summary>
    public const string EqualDiagonals = "3-equal-diagonals";

    /// <summary>The same frame with its heights: twisted and sagged.</summary>
    public const string EqualDiagonalsWithHeights = "3-equal-diagonals-with-heights";

    /// <summary>The same frame back from the jig.</summary>
    public const string EqualDiagonalsAfter = "3-equal-diagonals-after";

    /// <summary>Two steering levers of one look and two types.</summary>
    public const string WrongVariant = "4-wrong-variant";

    /// <summary>A lower arm pressed straight in four bites.</summary>
    public const string Press = "5-press";

    /// <summary>A square frame with one wishbone mount bent.</summary>
    public const string BentMount = "6-bent-mount";

    /// <summary>The same mount pulled back.</summary>
    public const string BentMountAfter = "6-bent-mount-after";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        TheInch,
        OneHorn,
        OneHornAfter,
        EqualDiagonals,
        EqualDiagonalsWithHeights,
        EqualDiagonalsAfter,
        WrongVariant,
        Press,
        BentMount,
        BentMountAfter,
    ];

    /// <summary>Where the file of a story stands.</summary>
    public static string PathTo(string story) => Repository.PathTo("tests", "Plumbmark.Testing", "Stories", $"{story}.json");

    /// <summary>The car of a story.</summary>
    public static CarFile Car(string story) =>
        CarFileReader
            .Read(File.ReadAllBytes(PathTo(story)))
            .Match(car => car, faults => throw new InvalidOperationException(string.Join('\n', faults)));
}
