namespace Plumbmark.Inspection.Road;

/// <summary>What the Road calls things, in trade words.</summary>
public static class RoadNames
{
    /// <summary>A figure, such as "camber".</summary>
    public static string Of(FigureKind kind) =>
        kind switch
        {
            FigureKind.Camber => "camber",
            FigureKind.Castor => "castor",
            FigureKind.KingPin => "king-pin inclination",
            FigureKind.ToeIn => "toe-in",
            FigureKind.CamberSplit => "camber split (left less right)",
            FigureKind.CastorSplit => "castor split (left less right)",
            FigureKind.BumpSteer => "bump steer",
            FigureKind.ToeOutOnTurns => "outer wheel's turn when the inner is turned 20°",
            FigureKind.RearCamber => "rear camber",
            FigureKind.RearToeIn => "rear toe-in",
            FigureKind.Thrust => "thrust line from the centre line",
            FigureKind.SetBack => "front set-back",
            FigureKind.Wheelbase => "wheelbase",
            FigureKind.WheelbaseSplit => "wheelbase split (left less right)",
            FigureKind.FrontTrack => "front track",
            FigureKind.RearTrack => "rear track",
            FigureKind.RearOffset => "rear axle's offset to the left",
            FigureKind.DogTrack => "dog-tracking, rear wheels to the left",
            _ => "ride-height split (left less right)",
        };

    /// <summary>A figure with its side, such as "left camber".</summary>
    public static string Of(FigureKind kind, Side? side) =>
        (kind, side) switch
        {
            (_, null) => Of(kind),
            (FigureKind.ToeOutOnTurns, Side.Left) => "right wheel's turn, left wheel turned 20° to the left",
            (FigureKind.ToeOutOnTurns, _) => "left wheel's turn, right wheel turned 20° to the right",
            _ => $"{Of(side.Value)} {Of(kind)}",
        };

    /// <summary>A side.</summary>
    public static string Of(Side side) => side == Side.Left ? "left" : "right";

    /// <summary>A wheel.</summary>
    public static string Of(WheelPlace wheel) =>
        wheel switch
        {
            WheelPlace.FrontLeft => "front left",
            WheelPlace.FrontRight => "front right",
            WheelPlace.RearLeft => "rear left",
            _ => "rear right",
        };

    /// <summary>A part or place.</summary>
    public static string Of(CornerPart part) =>
        part switch
        {
            CornerPart.UpperFront => "upper arm's front pivot",
            CornerPart.UpperRear => "upper arm's rear pivot",
            CornerPart.LowerFront => "lower arm's front pivot",
            CornerPart.LowerRear => "lower arm's rear pivot",
            CornerPart.TrackRodInner => "track rod's inner joint",
            CornerPart.UpperArm => "upper arm",
            CornerPart.LowerArm => "lower arm",
            CornerPart.TrackRod => "track rod's length",
            CornerPart.Upright => "upright",
            CornerPart.Lever => "steering lever",
            CornerPart.Stub => "stub axle",
            CornerPart.RearEye => "rear eye or inner pivot",
            _ => "rear arm's outer pivot",
        };

    /// <summary>What of a part is off.</summary>
    public static string Of(PartQuantity quantity) =>
        quantity switch
        {
            PartQuantity.Forward => "forward",
            PartQuantity.Out => "out",
            PartQuantity.Up => "up",
            PartQuantity.FrontHalf => "front half longer",
            PartQuantity.RearHalf => "rear half longer",
            PartQuantity.Ahead => "outer joint forward",
            PartQuantity.Reach => "reach longer",
            PartQuantity.Length => "longer",
            PartQuantity.Camber => "more camber",
            _ => "more toe-in",
        };

    /// <summary>A part or place on one side.</summary>
    public static string Of(CornerPart part, Side side) => $"{Of(side)} {Of(part)}";
}
