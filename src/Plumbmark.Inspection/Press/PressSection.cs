using Plumbmark.Engine.Bending;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>The sizes of a section as measured. Which are needed depends on the shape.</summary>
/// <param name="Shape">The shape as it lies under the ram.</param>
/// <param name="Depth">Size in the direction of the ram; the diameter of a round.</param>
/// <param name="Width">Size across; null for a round.</param>
/// <param name="Wall">Thickness of wall, web or sheet; null for a solid bar.</param>
/// <param name="Flange">Thickness of flanges or legs; the wall when null.</param>
/// <param name="Foot">Width of each foot of a hat beyond its leg; null for others.</param>
public sealed record PressSection(
    SectionShape Shape,
    Length Depth,
    Length? Width = null,
    Length? Wall = null,
    Length? Flange = null,
    Length? Foot = null
)
{
    /// <summary>What a shape needs besides its depth, in the words of the file.</summary>
    public static IReadOnlyList<string> Needs(SectionShape shape) =>
        shape switch
        {
            SectionShape.Round => [],
            SectionShape.Rectangle => ["width"],
            SectionShape.Tube => ["wall"],
            SectionShape.Hat => ["width", "wall", "foot"],
            _ => ["width", "wall"],
        };

    /// <summary>What is missing or impossible, one sentence each; empty when the section can be built.</summary>
    public IReadOnlyList<string> Faults()
    {
        var given = new Dictionary<string, Length?>(StringComparer.Ordinal)
        {
            ["width"] = Width,
            ["wall"] = Wall,
            ["foot"] = Foot,
        };
        var faults = Needs(Shape).Where(n => given[n] is null).Select(n => Texts.Say("press.section.this-section-needs-its", n)).ToList();
        if (faults.Count > 0)
        {
            return faults;
        }

        try
        {
            Build();
            return [];
        }
        catch (ArgumentOutOfRangeException)
        {
            return [Texts.Say("press.section.the-walls-are-thicker-than")];
        }
    }

    /// <summary>The section as the theory needs it. Ask <see cref="Faults"/> first.</summary>
    public CrossSection Build()
    {
        var (depth, width, wall) = (Depth.Metres, Width?.Metres ?? 0, Wall?.Metres ?? 0);
        var flange = Flange?.Metres ?? wall;
        return Shape switch
        {
            SectionShape.Rectangle => CrossSection.Rectangle(width, depth),
            SectionShape.Round => CrossSection.Round(depth),
            SectionShape.Tube => CrossSection.Tube(depth, wall),
            SectionShape.Box => CrossSection.Box(width, depth, wall),
            SectionShape.Channel => CrossSection.Channel(width, depth, wall, flange),
            SectionShape.ChannelWebAtRam => CrossSection.LyingChannel(width, depth, wall, flange, legsAtRam: false),
            SectionShape.ChannelLegsAtRam => CrossSection.LyingChannel(width, depth, wall, flange, legsAtRam: true),
            SectionShape.I => CrossSection.I(width, depth, wall, flange),
            SectionShape.Hat => CrossSection.Hat(width, depth, Foot?.Metres ?? 0, wall),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
