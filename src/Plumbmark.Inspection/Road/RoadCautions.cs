using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>What is said with every answer of the Road, on screen, in print and in JSON.</summary>
public static class RoadCautions
{
    /// <summary>The cautions.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Texts.Say("road.cautions.these-figures-compare-they-certify"),
        Texts.Say("road.cautions.final-wheel-alignment-is-for"),
        Texts.Say("road.cautions.limits-marked-practice-are-not"),
        Texts.Say("road.cautions.a-bent-steering-lever-upright"),
        Texts.Say("road.cautions.springs-store-force-enough-to"),
    ];
}
