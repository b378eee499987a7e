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
            PartKind.SteeringLever => "A steering lever is never straightened: if it breaks, the car cannot be steered.",
            PartKind.Upright => "An upright is never straightened: if it breaks, the wheel comes off.",
            PartKind.StubAxle => "A stub axle is never straightened: if it breaks, the wheel comes off.",
            PartKind.Trunnion => "A trunnion is a casting and carries the wheel; it is not straightened.",
            PartKind.FulcrumPin => "A bent pin is renewed, not straightened.",
            PartKind.CoilSpring => "A spring is renewed, not straightened.",
            PartKind.Bush => "A bush is renewed.",
            PartKind.TrackRod => "A track rod or steering link is never straightened: if it breaks, the car cannot be steered.",
            PartKind.BallJoint => "A ball joint is renewed, never straightened: if it breaks, the wheel folds under.",
            PartKind.Own =>
                "Nobody has told what this part does, so it is not straightened. If it is an arm, a spring seat or a bracket that neither steers nor carries a wheel, choose that on its card.",
            _ => null,
        };

    private static string? OfCondition(Part part) =>
        part.Conditions.Count == 0
            ? null
            : part.Conditions.Min() switch
            {
                PartCondition.Cracked => "It is cracked.",
                PartCondition.Kinked => "It is kinked: the metal in the crease is used up.",
                PartCondition.Corroded => "It is pitted or thinned by rust.",
                PartCondition.PressedBefore => "It was pressed before; steel bent twice cracks.",
                PartCondition.Welded => "It was welded where the maker did not weld.",
                PartCondition.Heated => "It was heated before, and its strength is unknown.",
                _ => "A thread or seat is damaged.",
            };

    private static string? OfMake(PartMake? make) =>
        make switch
        {
            PartMake.Pressed or PartMake.Fabricated => null,
            PartMake.Forged => "A forging springs back far and may hide cracks; it is not straightened at home.",
            PartMake.Cast => "A casting is never straightened: it breaks.",
            PartMake.Machined => "A part turned or milled from bar is renewed.",
            _ =>
                "It is not told how it was made; only pressed or fabricated low-carbon steel is straightened. If it is one of these, say so.",
        };
}
