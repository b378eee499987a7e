namespace Plumbmark.Inspection.Bench;

/// <summary>What a person calls the kinds of part, how they were made and what was seen on them.</summary>
public static class PartWords
{
    /// <summary>A kind of part, in lower case.</summary>
    public static string For(PartKind kind) =>
        kind switch
        {
            PartKind.LowerWishbone => "lower wishbone",
            PartKind.UpperWishbone => "upper wishbone",
            PartKind.Upright => "upright",
            PartKind.StubAxle => "stub axle",
            PartKind.SteeringLever => "steering lever",
            PartKind.FulcrumPin => "fulcrum pin",
            PartKind.SpringSeat => "spring seat",
            PartKind.CoilSpring => "coil spring",
            PartKind.Trunnion => "trunnion",
            PartKind.Bush => "bush or bore",
            PartKind.TrackRod => "track rod",
            PartKind.BallJoint => "ball joint",
            PartKind.Bracket => "bracket",
            _ => "own part",
        };

    /// <summary>How a part was made; "not told how made" when unknown.</summary>
    public static string For(PartMake? make) =>
        make switch
        {
            PartMake.Pressed => "pressed",
            PartMake.Fabricated => "fabricated",
            PartMake.Forged => "forged",
            PartMake.Cast => "cast",
            PartMake.Machined => "machined",
            _ => "not told how made",
        };

    /// <summary>What was seen on a part.</summary>
    public static string For(PartCondition condition) =>
        condition switch
        {
            PartCondition.Cracked => "cracked",
            PartCondition.Kinked => "kinked",
            PartCondition.Corroded => "corroded",
            PartCondition.PressedBefore => "pressed before",
            PartCondition.Welded => "welded",
            PartCondition.Heated => "heated",
            _ => "thread or seat damaged",
        };

    /// <summary>How a part was looked over for cracks with nothing found; "no crack test yet" when it was not.</summary>
    public static string For(CrackMethod? clearBy) =>
        clearBy switch
        {
            CrackMethod.Dye => "dye penetrant, nothing found",
            CrackMethod.Magnetic => "magnetic particles, nothing found",
            CrackMethod.Eye => "by eye and glass, nothing found; that is no crack test",
            _ => "no crack test yet",
        };

    /// <summary>What the part is called: its owner's name for it, or its name in the file read as words, such as "Steering lever, left".</summary>
    public static string Title(Part part) =>
        part.Card.Name
        ?? (
            part.Id.EndsWith(".L", StringComparison.Ordinal) ? $"{Spaced(part.Id[..^2])}, left"
            : part.Id.EndsWith(".R", StringComparison.Ordinal) ? $"{Spaced(part.Id[..^2])}, right"
            : Spaced(part.Id)
        );

    private static string Spaced(string id) => id.Length == 0 ? id : char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ');
}
