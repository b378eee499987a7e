using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Bench.Json;

/// <summary>The words of the parts section of a car file.</summary>
internal static class PartWordLists
{
    public static readonly WordList<PartKind> Kinds = new(
        ("lower-wishbone", PartKind.LowerWishbone),
        ("upper-wishbone", PartKind.UpperWishbone),
        ("upright", PartKind.Upright),
        ("stub-axle", PartKind.StubAxle),
        ("steering-lever", PartKind.SteeringLever),
        ("fulcrum-pin", PartKind.FulcrumPin),
        ("spring-seat", PartKind.SpringSeat),
        ("coil-spring", PartKind.CoilSpring),
        ("trunnion", PartKind.Trunnion),
        ("bush", PartKind.Bush),
        ("track-rod", PartKind.TrackRod),
        ("ball-joint", PartKind.BallJoint),
        ("bracket", PartKind.Bracket),
        ("own", PartKind.Own)
    );

    public static readonly WordList<PartMake> Makes = new(
        ("pressed", PartMake.Pressed),
        ("fabricated", PartMake.Fabricated),
        ("forged", PartMake.Forged),
        ("cast", PartMake.Cast),
        ("machined", PartMake.Machined)
    );

    public static readonly WordList<PartCondition> Conditions = new(
        ("cracked", PartCondition.Cracked),
        ("kinked", PartCondition.Kinked),
        ("corroded", PartCondition.Corroded),
        ("pressed-before", PartCondition.PressedBefore),
        ("welded", PartCondition.Welded),
        ("heated", PartCondition.Heated),
        ("thread-damaged", PartCondition.ThreadDamaged)
    );

    /// <summary>What stands for no test at all; leaving the field out says the same.</summary>
    public const string NoCrackTest = "not-done";

    public static readonly WordList<CrackMethod> ClearBy = new(
        ("dye-clear", CrackMethod.Dye),
        ("magnetic-clear", CrackMethod.Magnetic),
        ("eye-clear", CrackMethod.Eye)
    );

    public static readonly WordList<NumberMark> Marks = new(
        ("unknown", NumberMark.Unknown),
        ("cast", NumberMark.Cast),
        ("stamped", NumberMark.Stamped),
        ("label", NumberMark.Label)
    );

    public static readonly WordList<CentresOver> Over = new(
        ("centre", CentresOver.Centre),
        ("inside", CentresOver.Inside),
        ("outside", CentresOver.Outside)
    );
}
