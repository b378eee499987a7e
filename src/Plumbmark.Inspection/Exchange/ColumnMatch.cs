using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Exchange;

/// <summary>Which column of a CSV file means what: guessed from its heads, and the person may choose otherwise.</summary>
public static class ColumnMatch
{
    /// <summary>The fields that a column may mean, in the order in which readings are written.</summary>
    public static IReadOnlyList<string> Fields { get; } =
    [
        "id",
        "kind",
        "point",
        "from",
        "to",
        "value",
        "dx",
        "dy",
        "above",
        "way",
        "edge",
        "startAt",
        "unit",
        "tool",
        "sigma",
        "note",
        "withdrawn",
    ];

    // What people write above such columns; letters and digits only, lower case.
    private static readonly Dictionary<string, string> s_words = new(StringComparer.Ordinal)
    {
        ["no"] = "id",
        ["nr"] = "id",
        ["number"] = "id",
        ["type"] = "kind",
        ["how"] = "kind",
        ["a"] = "from",
        ["pointa"] = "from",
        ["point1"] = "from",
        ["end1"] = "from",
        ["b"] = "to",
        ["pointb"] = "to",
        ["point2"] = "to",
        ["end2"] = "to",
        ["length"] = "value",
        ["reading"] = "value",
        ["read"] = "value",
        ["measured"] = "value",
        ["measurement"] = "value",
        ["distance"] = "value",
        ["height"] = "value",
        ["forward"] = "dx",
        ["left"] = "dy",
        ["tapestartsat"] = "startAt",
        ["startsat"] = "startAt",
        ["start"] = "startAt",
        ["units"] = "unit",
        ["tape"] = "tool",
        ["remark"] = "note",
        ["remarks"] = "note",
        ["comment"] = "note",
        ["comments"] = "note",
    };

    /// <summary>A field for each head, or null for a column that means nothing here. A field is given once: to its first head.</summary>
    public static IReadOnlyList<string?> Of(IReadOnlyList<string> heads)
    {
        var given = new HashSet<string>(StringComparer.Ordinal);
        return [.. heads.Select(h => FieldOf(h) is { } field && given.Add(field) ? field : null)];
    }

    /// <summary>The unit that a head names, as in <c>Length (mm)</c>; null when it names none.</summary>
    public static LengthUnit? UnitOf(string head) =>
        head.Split([' ', '(', ')', ',', '[', ']', '/'], StringSplitOptions.RemoveEmptyEntries).LastOrDefault()?.ToLowerInvariant() switch
        {
            "mm" or "millimetres" => LengthUnit.Millimetre,
            "in" or "inch" or "inches" => LengthUnit.Inch,
            _ => null,
        };

    private static string? FieldOf(string head)
    {
        var end = head.IndexOfAny(['(', '[', ',']);
        var bare = string.Concat((end > 0 ? head[..end] : head).Where(char.IsLetterOrDigit)).ToLowerInvariant();
        return Fields.FirstOrDefault(f => f.Equals(bare, StringComparison.OrdinalIgnoreCase)) ?? s_words.GetValueOrDefault(bare);
    }
}
