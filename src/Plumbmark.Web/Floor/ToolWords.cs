using Plumbmark.Inspection.Car;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>A tool in a few words.</summary>
internal static class ToolWords
{
    /// <summary>The kinds with their words.</summary>
    public static IReadOnlyList<(string Value, string Text)> Kinds { get; } =
    [
        ("Tape", Say("tool.tape")),
        ("Rule", Say("tool.rule")),
        ("Trammel", Say("tool.trammel")),
        ("Level", Say("tool.level")),
        ("Laser", Say("tool.laser")),
        ("Caliper", Say("tool.caliper")),
        ("Plumb", Say("tool.plumb")),
        ("Micrometer", Say("tool.micrometer")),
        ("Feeler", Say("tool.feeler")),
        ("Dial", Say("tool.dial")),
        ("Other", Say("tool.other")),
    ];

    /// <summary>Such as <c>tape · class II · reads to 1/16 in</c>.</summary>
    public static string For(Tool tool)
    {
        var parts = new List<string> { tool.Id };
        if (tool.Class is { } c)
        {
            parts.Add(Say("tool.class", c));
        }

        if (tool.Division is { } division)
        {
            parts.Add(Say("tool.reads-to", division));
        }

        return string.Join(" · ", parts);
    }
}
