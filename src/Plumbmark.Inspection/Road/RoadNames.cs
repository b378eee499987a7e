using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>What the Road calls things, in trade words.</summary>
public static class RoadNames
{
    /// <summary>A figure, such as "camber".</summary>
    public static string Of(FigureKind kind) =>
        kind switch
        {
            FigureKind.Camber => Texts.Say("road.names.camber"),
            FigureKind.Castor => Texts.Say("road.names.castor"),
            FigureKind.KingPin => Texts.Say("road.names.king-pin-inclination"),
            FigureKind.ToeIn => Texts.Say("road.names.toe-in"),
            FigureKind.CamberSplit => Texts.Say("road.names.camber-split-left-less-right"),
            FigureKind.CastorSplit => Texts.Say("road.names.castor-split-left-less-right"),
            FigureKind.BumpSteer => Texts.Say("road.names.bump-steer"),
            FigureKind.ToeOutOnTurns => Texts.Say("road.names.outer-wheels-turn-when-the"),
            FigureKind.RearCamber => Texts.Say("road.names.rear-camber"),
            FigureKind.RearToeIn => Texts.Say("road.names.rear-toe-in"),
            FigureKind.Thrust => Texts.Say("road.names.thrust-line-from-the-centre"),
            FigureKind.SetBack => Texts.Say("road.names.front-set-back"),
            FigureKind.Wheelbase => Texts.Say("road.names.wheelbase"),
            FigureKind.WheelbaseSplit => Texts.Say("road.names.wheelbase-split-left-less-right"),
            FigureKind.FrontTrack => Texts.Say("road.names.front-track"),
            FigureKind.RearTrack => Texts.Say("road.names.rear-track"),
            FigureKind.RearOffset => Texts.Say("road.names.rear-axles-offset-to-the"),
            FigureKind.DogTrack => Texts.Say("road.names.dog-tracking-rear-wheels-to"),
            _ => Texts.Say("road.names.ride-height-split-left-less"),
        };

    /// <summary>A figure with its side, such as "left camber".</summary>
    public static string Of(FigureKind kind, Side? side) =>
        (kind, side) switch
        {
            (_, null) => Of(kind),
            (FigureKind.ToeOutOnTurns, Side.Left) => Texts.Say("road.names.right-wheels-turn-left-wheel"),
            (FigureKind.ToeOutOnTurns, _) => Texts.Say("road.names.left-wheels-turn-right-wheel"),
            _ => $"{Of(side.Value)} {Of(kind)}",
        };

    /// <summary>A side.</summary>
    public static string Of(Side side) => side == Side.Left ? Texts.Say("road.names.left") : Texts.Say("road.names.right");

    /// <summary>A wheel.</summary>
    public static string Of(WheelPlace wheel) =>
        wheel switch
        {
            WheelPlace.FrontLeft => Texts.Say("road.names.front-left"),
            WheelPlace.FrontRight => Texts.Say("road.names.front-right"),
            WheelPlace.RearLeft => Texts.Say("road.names.rear-left"),
            _ => Texts.Say("road.names.rear-right"),
        };

    /// <summary>A part or place.</summary>
    public static string Of(CornerPart part) =>
        part switch
        {
            CornerPart.UpperFront => Texts.Say("road.names.upper-arms-front-pivot"),
            CornerPart.UpperRear => Texts.Say("road.names.upper-arms-rear-pivot"),
            CornerPart.LowerFront => Texts.Say("road.names.lower-arms-front-pivot"),
            CornerPart.LowerRear => Texts.Say("road.names.lower-arms-rear-pivot"),
            CornerPart.TrackRodInner => Texts.Say("road.names.track-rods-inner-joint"),
            CornerPart.UpperArm => Texts.Say("road.names.upper-arm"),
            CornerPart.LowerArm => Texts.Say("road.names.lower-arm"),
            CornerPart.TrackRod => Texts.Say("road.names.track-rods-length"),
            CornerPart.Upright => Texts.Say("road.names.upright"),
            CornerPart.Lever => Texts.Say("road.names.steering-lever"),
            CornerPart.Stub => Texts.Say("road.names.stub-axle"),
            CornerPart.RearEye => Texts.Say("road.names.rear-eye-or-inner-pivot"),
            _ => Texts.Say("road.names.rear-arms-outer-pivot"),
        };

    /// <summary>What of a part is off.</summary>
    public static string Of(PartQuantity quantity) =>
        quantity switch
        {
            PartQuantity.Forward => Texts.Say("road.names.forward"),
            PartQuantity.Out => Texts.Say("road.names.out"),
            PartQuantity.Up => Texts.Say("road.names.up"),
            PartQuantity.FrontHalf => Texts.Say("road.names.front-half-longer"),
            PartQuantity.RearHalf => Texts.Say("road.names.rear-half-longer"),
            PartQuantity.Ahead => Texts.Say("road.names.outer-joint-forward"),
            PartQuantity.Reach => Texts.Say("road.names.reach-longer"),
            PartQuantity.Length => Texts.Say("road.names.longer"),
            PartQuantity.Camber => Texts.Say("road.names.more-camber"),
            _ => Texts.Say("road.names.more-toe-in"),
        };

    /// <summary>A part or place on one side.</summary>
    public static string Of(CornerPart part, Side side) => $"{Of(side)} {Of(part)}";
}
