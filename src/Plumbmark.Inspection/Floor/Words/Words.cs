using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>Small matters of writing that all sentences share.</summary>
internal static class Words
{
    /// <summary><c>sideShift</c> as <c>side-shift</c>.</summary>
    public static string Dashed(string camel) =>
        string.Concat(camel.Select(c => char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : $"{c}"));

    /// <summary>A, B and C.</summary>
    public static string And(IReadOnlyList<string> items) =>
        items.Count switch
        {
            0 => "",
            1 => items[0],
            _ => Texts.Say("floor.words.and", string.Join(", ", items.Take(items.Count - 1)), items[^1]),
        };

    /// <summary>One reading, two readings.</summary>
    public static string Count(int count, string one, string? many = null) => $"{count} {(count == 1 ? one : many ?? one + "s")}";
}
