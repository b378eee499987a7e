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
        ("stub", CornerPart.Stub),
        ("rearEye", CornerPart.RearEye),
        ("rearOuter", CornerPart.RearOuter)
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
        ("rearOffset", FigureKind.RearOffset),
        ("dogTrack", FigureKind.DogTrack),
        ("rideHeightSplit", FigureKind.RideHeightSplit)
    );

    /// <summary>What a deviation of a part may be told in, by field name. An arm in two halves is told by its halves' lengths, one in a single piece by its reach.</summary>
    public static IReadOnlyList<(string Field, PartQuantity Quantity)> AmountsOf(CornerPart part) =>
        part switch
        {
            CornerPart.UpperArm or CornerPart.LowerArm =>
            [
                ("frontHalf", PartQuantity.FrontHalf),
                ("rearHalf", PartQuantity.RearHalf),
                ("ahead", PartQuantity.Ahead),
                ("reach", PartQuantity.Reach),
            ],
            CornerPart.TrackRod or CornerPart.Upright => [("length", PartQuantity.Length)],
            CornerPart.Stub => [("camber", PartQuantity.Camber), ("toeIn", PartQuantity.ToeIn), ("up", PartQuantity.Up)],
            _ => [("forward", PartQuantity.Forward), ("out", PartQuantity.Out), ("up", PartQuantity.Up)],
        };

    /// <summary>Whether an amount is an angle.</summary>
    public static bool IsAngle(PartQuantity quantity) => quantity is PartQuantity.Camber or PartQuantity.ToeIn;
}
