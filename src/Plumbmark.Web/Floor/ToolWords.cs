using Plumbmark.Inspection.Car;

namespace Plumbmark.Web.Floor;

/// <summary>A tool in a few words.</summary>
internal static class ToolWords
{
    /// <summary>The kinds with their words.</summary>
    public static IReadOnlyList<(string Value, string Text)> Kinds { get; } =
    [
        ("Tape", "tape"),
        ("Rule", "rule"),
        ("Trammel", "trammel"),
        ("Level", "level (water, spirit, digital)"),
        ("Laser", "laser"),
        ("Caliper", "caliper or height gauge"),
        ("Plumb", "plumb bob"),
        ("Micrometer", "micrometer"),
        ("Feeler", "feelers"),
        ("Dial", "dial gauge"),
        ("Other", "other"),
    ];

    /// <summary>Such as <c>tape · class II · reads to 1/16 in</c>.</summary>
    public static string For(Tool tool)
    {
        var parts = new List<string> { tool.Id };
        if (tool.Class is { } c)
        {
            parts.Add($"class {c}");
        }

        if (tool.Division is { } division)
        {
            parts.Add($"reads to {division}");
        }

        return string.Join(" · ", parts);
    }
}
