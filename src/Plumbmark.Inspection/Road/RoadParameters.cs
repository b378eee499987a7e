using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// The order of everything the wheels depend on, as one row of numbers: the left corner's parameters, the right corner's, then for each rear side the places of its two pick-ups.
/// Metres and radians, found minus drawn, own-side axes (outboard positive).
/// </summary>
public static class RoadParameters
{
    /// <summary>Where the rear pick-ups begin.</summary>
    public const int Rear = 2 * CornerSensitivity.ParameterCount;

    /// <summary>How many numbers a row has.</summary>
    public const int Count = Rear + 12;

    /// <summary>The index of a corner's parameter.</summary>
    public static int Of(Side side, CornerParameter parameter) => CornerStart(side) + (int)parameter;

    /// <summary>Where a corner's parameters begin.</summary>
    public static int CornerStart(Side side) => side == Side.Left ? 0 : CornerSensitivity.ParameterCount;

    /// <summary>The index of a rear pick-up's coordinate.</summary>
    /// <param name="side">The side.</param>
    /// <param name="place">0 for a spring's eye or an arm's inner pivot, 1 for an arm's outer pivot.</param>
    /// <param name="axis">0, 1 or 2.</param>
    public static int OfRear(Side side, int place, int axis) => Rear + (6 * (int)side) + (3 * place) + axis;

    /// <summary>Where a pick-up of the frame begins in a corner's parameters; null for a part.</summary>
    public static CornerParameter? PlaceOf(CornerPart part) =>
        part switch
        {
            CornerPart.UpperFront => CornerParameter.UpperFrontX,
            CornerPart.UpperRear => CornerParameter.UpperRearX,
            CornerPart.LowerFront => CornerParameter.LowerFrontX,
            CornerPart.LowerRear => CornerParameter.LowerRearX,
            CornerPart.TrackRodInner => CornerParameter.TrackRodInnerX,
            _ => null,
        };

    /// <summary>The part or place that a parameter belongs to.</summary>
    public static CornerPart PartOf(CornerParameter parameter) =>
        parameter switch
        {
            <= CornerParameter.UpperFrontZ => CornerPart.UpperFront,
            <= CornerParameter.UpperRearZ => CornerPart.UpperRear,
            <= CornerParameter.LowerFrontZ => CornerPart.LowerFront,
            <= CornerParameter.LowerRearZ => CornerPart.LowerRear,
            <= CornerParameter.TrackRodInnerZ => CornerPart.TrackRodInner,
            <= CornerParameter.UpperArmSecond => CornerPart.UpperArm,
            <= CornerParameter.LowerArmSecond => CornerPart.LowerArm,
            CornerParameter.TrackRodLength => CornerPart.TrackRod,
            CornerParameter.UprightSpan => CornerPart.Upright,
            <= CornerParameter.LeverZ => CornerPart.Lever,
            _ => CornerPart.Stub,
        };
}
