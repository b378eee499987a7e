using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>Whether a part may ever be straightened cold. The room Press asks this too.</summary>
public static class Straightening
{
    /// <summary>A larger bend in an arm is for an engineer, whatever the part is made of: 1/2 in (common practice, from memory).</summary>
    public const double LargestBendMetres = 0.5 * 0.0254;

    /// <summary>The same for an angle: 5 degrees (common practice, from memory).</summary>
    public const double LargestBendRadians = 5 * Math.PI / 180;

    /// <summary>Why this part is never straightened; null when nothing known forbids it.</summary>
    public static string? Forbidden(Part part) => OfKind(part.Kind) ?? OfCondition(part) ?? OfMake(part.Make);

    /// <summary>What has to be told of a part before anybody can say whether it may be straightened; null when nothing is wanting, or when something known forbids it anyway.</summary>
    public static string? Untold(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var isKnownToBeForbidden =
            (part.Kind != PartKind.Own && OfKind(part.Kind) is not null)
            || OfCondition(part) is not null
            || (part.Make is not null && OfMake(part.Make) is not null);
        return isKnownToBeForbidden ? null
            : part.Kind == PartKind.Own ? OfKind(part.Kind)
            : part.Make is null ? OfMake(null)
            : null;
    }

    private static string? OfKind(PartKind kind) =>
        kind switch
        {
            PartKind.SteeringLever => Texts.Say("bench.straightening.a-steering-lever-is-never"),
            PartKind.Upright => Texts.Say("bench.straightening.an-upright-is-never-straightened"),
            PartKind.StubAxle => Texts.Say("bench.straightening.a-stub-axle-is-never"),
            PartKind.Trunnion => Texts.Say("bench.straightening.a-trunnion-is-a-casting"),
            PartKind.FulcrumPin => Texts.Say("bench.straightening.a-bent-pin-is-renewed"),
            PartKind.CoilSpring => Texts.Say("bench.straightening.a-spring-is-renewed-not"),
            PartKind.Bush => Texts.Say("bench.straightening.a-bush-is-renewed"),
            PartKind.TrackRod => Texts.Say("bench.straightening.a-track-rod-or-steering"),
            PartKind.BallJoint => Texts.Say("bench.straightening.a-ball-joint-is-renewed"),
            PartKind.Own => Texts.Say("bench.straightening.nobody-has-told-what-this"),
            _ => null,
        };

    private static string? OfCondition(Part part) =>
        part.Conditions.Count == 0
            ? null
            : part.Conditions.Min() switch
            {
                PartCondition.Cracked => Texts.Say("bench.straightening.it-is-cracked"),
                PartCondition.Kinked => Texts.Say("bench.straightening.it-is-kinked-the-metal"),
                PartCondition.Corroded => Texts.Say("bench.straightening.it-is-pitted-or-thinned"),
                PartCondition.PressedBefore => Texts.Say("bench.straightening.it-was-pressed-before-steel"),
                PartCondition.Welded => Texts.Say("bench.straightening.it-was-welded-where-the"),
                PartCondition.Heated => Texts.Say("bench.straightening.it-was-heated-before-and"),
                _ => Texts.Say("bench.straightening.a-thread-or-seat-is"),
            };

    private static string? OfMake(PartMake? make) =>
        make switch
        {
            PartMake.Pressed or PartMake.Fabricated => null,
            PartMake.Forged => Texts.Say("bench.straightening.a-forging-springs-back-far"),
            PartMake.Cast => Texts.Say("bench.straightening.a-casting-is-never-straightened"),
            PartMake.Machined => Texts.Say("bench.straightening.a-part-turned-or-milled"),
            _ => Texts.Say("bench.straightening.it-is-not-told-how"),
        };
}
