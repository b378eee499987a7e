using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;

namespace Plumbmark.Testing;

/// <summary>The corner of reference/linkage/double_wishbone_check.csv.</summary>
public static class ReferenceWishbone
{
    /// <summary>Its points, metres.</summary>
    public static CornerPoints Points { get; } =
        new()
        {
            UpperFront = new(0.110, 0.330, 0.420),
            UpperRear = new(-0.130, 0.330, 0.410),
            LowerFront = new(0.160, 0.250, 0.190),
            LowerRear = new(-0.180, 0.250, 0.195),
            UpperJoint = new(-0.012, 0.560, 0.440),
            LowerJoint = new(0.008, 0.615, 0.170),
            TrackRodInner = new(-0.150, 0.240, 0.230),
            TrackRodOuter = new(-0.130, 0.590, 0.212),
            WheelCentre = new(0, 0.650, 0.310),
            SpinAxis = CornerPoints.SpinAxisOf(Math.PI / 180, 0.15 * Math.PI / 180),
        };
}
