using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>What a person calls the kinds of part, how they were made and what was seen on them.</summary>
public static class PartWords
{
    /// <summary>A kind of part, in lower case.</summary>
    public static string For(PartKind kind) =>
        kind switch
        {
            PartKind.LowerWishbone => Texts.Say("bench.part.lower-wishbone"),
            PartKind.UpperWishbone => Texts.Say("bench.part.upper-wishbone"),
            PartKind.Upright => "upright",
            PartKind.StubAxle => Texts.Say("bench.part.stub-axle"),
            PartKind.SteeringLever => Texts.Say("bench.part.steering-lever"),
            PartKind.FulcrumPin => Texts.Say("bench.part.fulcrum-pin"),
            PartKind.SpringSeat => Texts.Say("bench.part.spring-seat"),
            PartKind.CoilSpring => Texts.Say("bench.part.coil-spring"),
            PartKind.Trunnion => "trunnion",
            PartKind.Bush => Texts.Say("bench.part.bush-or-bore"),
            PartKind.TrackRod => Texts.Say("bench.part.track-rod"),
            PartKind.BallJoint => Texts.Say("bench.part.ball-joint"),
            PartKind.Bracket => "bracket",
            _ => Texts.Say("bench.part.own-part"),
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
            _ => Texts.Say("bench.part.not-told-how-made"),
        };

    /// <summary>What was seen on a part.</summary>
    public static string For(PartCondition condition) =>
        condition switch
        {
            PartCondition.Cracked => "cracked",
            PartCondition.Kinked => "kinked",
            PartCondition.Corroded => "corroded",
            PartCondition.PressedBefore => Texts.Say("bench.part.pressed-before"),
            PartCondition.Welded => "welded",
            PartCondition.Heated => "heated",
            _ => Texts.Say("bench.part.thread-or-seat-damaged"),
        };

    /// <summary>How a part was looked over for cracks with nothing found; "no crack test yet" when it was not.</summary>
    public static string For(CrackMethod? clearBy) =>
        clearBy switch
        {
            CrackMethod.Dye => Texts.Say("bench.part.dye-penetrant-nothing-found"),
            CrackMethod.Magnetic => Texts.Say("bench.part.magnetic-particles-nothing-found"),
            CrackMethod.Eye => Texts.Say("bench.part.by-eye-and-glass-nothing"),
            _ => Texts.Say("bench.part.no-crack-test-yet"),
        };

    /// <summary>What the part is called: its owner's name for it, or its name in the file read as words, such as "Steering lever, left".</summary>
    public static string Title(Part part) =>
        part.Card.Name
        ?? (
            part.Id.EndsWith(".L", StringComparison.Ordinal) ? Texts.Say("bench.part.left", Spaced(part.Id[..^2]))
            : part.Id.EndsWith(".R", StringComparison.Ordinal) ? Texts.Say("bench.part.right", Spaced(part.Id[..^2]))
            : Spaced(part.Id)
        );

    private static string Spaced(string id) => id.Length == 0 ? id : char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ');
}
