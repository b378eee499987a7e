using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// The order of everything the wheels depend on, as one row of numbers: for the left side, then for the right, the front corner's parameters and the places of the rear's two pick-ups.
/// Metres and radians, found minus drawn, own-side axes (outboard positive).
/// </summary>
internal static class RoadParameters
{
    /// <summary>How many numbers a side has.</summary>
    public const int PerSide = CornerSensitivity.ParameterCount + 6;

    /// <summary>How many numbers a row has.</summary>
    public const int Count = 2 * PerSide;

    /// <summary>Where a side's front corner begins.</summary>
    public static int CornerStart(Side side) => (int)side * PerSide;

    /// <summary>Where a side's rear pick-ups begin.</summary>
    public static int RearStart(Side side) => CornerStart(side) + CornerSensitivity.ParameterCount;

    /// <summary>The index of one quantity of a part.</summary>
    public static int Of(Side side, CornerPart part, PartQuantity quantity) =>
        Of(side, part)
        + quantity switch
        {
            PartQuantity.Out or PartQuantity.RearHalf or PartQuantity.Reach or PartQuantity.ToeIn => 1,
            PartQuantity.Up => 2,
            _ => 0,
        };

    /// <summary>The index where a part's quantities begin.</summary>
    public static int Of(Side side, CornerPart part) =>
        part switch
        {
            CornerPart.RearEye => RearStart(side),
            CornerPart.RearOuter => RearStart(side) + 3,
            _ => CornerStart(side) + (int)FirstOf(part),
        };

    /// <summary>How many quantities a part has.</summary>
    public static int SizeOf(CornerPart part) =>
        part switch
        {
            CornerPart.UpperArm or CornerPart.LowerArm => 2,
            CornerPart.TrackRod or CornerPart.Upright => 1,
            _ => 3,
        };

    /// <summary>Whether a part is a place on the frame rather than a loose part.</summary>
    public static bool IsPickUp(CornerPart part) => part <= CornerPart.TrackRodInner || part >= CornerPart.RearEye;

    private static CornerParameter FirstOf(CornerPart part) =>
        part switch
        {
            CornerPart.UpperFront => CornerParameter.UpperFrontX,
            CornerPart.UpperRear => CornerParameter.UpperRearX,
            CornerPart.LowerFront => CornerParameter.LowerFrontX,
            CornerPart.LowerRear => CornerParameter.LowerRearX,
            CornerPart.TrackRodInner => CornerParameter.TrackRodInnerX,
            CornerPart.UpperArm => CornerParameter.UpperArmFirst,
            CornerPart.LowerArm => CornerParameter.LowerArmFirst,
            CornerPart.TrackRod => CornerParameter.TrackRodLength,
            CornerPart.Upright => CornerParameter.UprightSpan,
            CornerPart.Lever => CornerParameter.LeverX,
            _ => CornerParameter.StubCamber,
        };
}
