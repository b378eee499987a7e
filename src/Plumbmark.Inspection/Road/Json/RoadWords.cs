using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>The words of the road section.</summary>
internal static class RoadWords
{
    public static readonly WordList<Side> Sides = new(("L", Side.Left), ("R", Side.Right));

    public static readonly WordList<WheelPlace> Wheels = new(
        ("FL", WheelPlace.FrontLeft),
        ("FR", WheelPlace.FrontRight),
        ("RL", WheelPlace.RearLeft),
        ("RR", WheelPlace.RearRight)
    );

    public static readonly WordList<Axle> Axles = new(("front", Axle.Front), ("rear", Axle.Rear));

    public static readonly WordList<ArmMake> Makes = new(("two halves", ArmMake.TwoHalves), ("one piece", ArmMake.OnePiece));

    public static readonly WordList<CornerPart> Parts = new(
        ("upperFront", CornerPart.UpperFront),
        ("upperRear", CornerPart.UpperRear),
        ("lowerFront", CornerPart.LowerFront),
        ("lowerRear", CornerPart.LowerRear),
        ("trackRodInner", CornerPart.TrackRodInner),
        ("upperArm", CornerPart.UpperArm),
        ("lowerArm", CornerPart.LowerArm),
        ("trackRod", CornerPart.TrackRod),
        ("upright", CornerPart.Upright),
        ("lever", CornerPart.Lever),
        ("stub", CornerPart.Stub)
    );

    public static readonly WordList<AdjusterKind> AdjusterKinds = new(
        ("shims", AdjusterKind.Shims),
        ("eccentric", AdjusterKind.Eccentric),
        ("trackRod", AdjusterKind.TrackRod)
    );

    public static readonly WordList<AdjusterDirection> Directions = new(
        ("out", AdjusterDirection.Out),
        ("in", AdjusterDirection.In),
        ("forward", AdjusterDirection.Forward),
        ("rearward", AdjusterDirection.Rearward),
        ("up", AdjusterDirection.Up),
        ("down", AdjusterDirection.Down)
    );

    public static readonly WordList<FigureKind> Figures = new(
        ("camber", FigureKind.Camber),
        ("castor", FigureKind.Castor),
        ("kingPin", FigureKind.KingPin),
        ("toeIn", FigureKind.ToeIn),
        ("camberSplit", FigureKind.CamberSplit),
        ("castorSplit", FigureKind.CastorSplit),
        ("bumpSteer", FigureKind.BumpSteer),
        ("toeOutOnTurns", FigureKind.ToeOutOnTurns),
        ("rearCamber", FigureKind.RearCamber),
        ("rearToeIn", FigureKind.RearToeIn),
        ("thrust", FigureKind.Thrust),
        ("setBack", FigureKind.SetBack),
        ("wheelbase", FigureKind.Wheelbase),
        ("wheelbaseSplit", FigureKind.WheelbaseSplit),
        ("frontTrack", FigureKind.FrontTrack),
        ("rearTrack", FigureKind.RearTrack),
        ("rideHeightSplit", FigureKind.RideHeightSplit)
    );

    /// <summary>What a deviation of a part may be told in, by field name.</summary>
    public static IReadOnlyList<(string Field, CornerParameter Parameter)> AmountsOf(CornerPart part) =>
        part switch
        {
            CornerPart.UpperFront => Place(CornerParameter.UpperFrontX),
            CornerPart.UpperRear => Place(CornerParameter.UpperRearX),
            CornerPart.LowerFront => Place(CornerParameter.LowerFrontX),
            CornerPart.LowerRear => Place(CornerParameter.LowerRearX),
            CornerPart.TrackRodInner => Place(CornerParameter.TrackRodInnerX),
            CornerPart.UpperArm => Arm(CornerParameter.UpperArmFirst),
            CornerPart.LowerArm => Arm(CornerParameter.LowerArmFirst),
            CornerPart.TrackRod => [("length", CornerParameter.TrackRodLength)],
            CornerPart.Upright => [("length", CornerParameter.UprightSpan)],
            CornerPart.Lever => Place(CornerParameter.LeverX),
            _ => [("camber", CornerParameter.StubCamber), ("toeIn", CornerParameter.StubToeIn), ("up", CornerParameter.StubHeight)],
        };

    /// <summary>Whether an amount is an angle.</summary>
    public static bool IsAngle(CornerParameter parameter) => parameter is CornerParameter.StubCamber or CornerParameter.StubToeIn;

    private static IReadOnlyList<(string, CornerParameter)> Place(CornerParameter x) => [("forward", x), ("out", x + 1), ("up", x + 2)];

    // An arm in two halves is told by its halves' lengths; one in a single piece by its reach and how far its outer joint lies ahead.
    private static IReadOnlyList<(string, CornerParameter)> Arm(CornerParameter first) =>
        [("frontHalf", first), ("rearHalf", first + 1), ("ahead", first), ("reach", first + 1)];
}
