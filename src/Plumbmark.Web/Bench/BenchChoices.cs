using Plumbmark.Inspection.Bench;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>What may be chosen in the bench's forms.</summary>
internal static class BenchChoices
{
    public static IReadOnlyList<(string Value, string Text)> Kinds { get; } = All<PartKind>(PartWords.For);

    public static IReadOnlyList<(string Value, string Text)> Makes { get; } = All<PartMake>(m => PartWords.For(m));

    public static IReadOnlyList<(string Value, string Text)> CrackMethods { get; } = All<CrackMethod>(m => PartWords.For(m));

    public static IReadOnlyList<(string Value, string Text)> Conditions { get; } = All<PartCondition>(PartWords.For);

    public static IReadOnlyList<(string Value, string Text)> Sides { get; } =
    [("left", Say("bench.left")), ("right", Say("bench.right")), ("none", Say("bench.neither"))];

    public static IReadOnlyList<(string Value, string Text)> Marks { get; } =
    [
        ("Cast", Say("bench.cast")),
        ("Stamped", Say("bench.stamped")),
        ("Label", Say("bench.on-a-label")),
        ("Unknown", Say("bench.not-told")),
    ];

    /// <summary>The case of an enumeration that a form sent; null when it is none.</summary>
    public static T? Of<T>(string text)
        where T : struct, Enum => Enum.TryParse<T>(text, out var value) && Enum.IsDefined(value) && char.IsLetter(text, 0) ? value : null;

    private static (string, string)[] All<T>(Func<T, string> words)
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(v => (v.ToString(), words(v)))];
}
