using Plumbmark.Engine.Linkage;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>The corner of reference/linkage/double_wishbone_check.csv.</summary>
internal static class ReferenceCorner
{
    public static CornerPoints Points { get; } =
        new()
        {
            UpperFront = Millimetres(110, 330, 420),
            UpperRear = Millimetres(-130, 330, 410),
            LowerFront = Millimetres(160, 250, 190),
            LowerRear = Millimetres(-180, 250, 195),
            UpperJoint = Millimetres(-12, 560, 440),
            LowerJoint = Millimetres(8, 615, 170),
            TrackRodInner = Millimetres(-150, 240, 230),
            TrackRodOuter = Millimetres(-130, 590, 212),
            WheelCentre = Millimetres(0, 650, 310),
            SpinAxis = CornerPoints.SpinAxisOf(Radians(1.0), Radians(0.15)),
        };

    public static Vector3 Millimetres(double x, double y, double z) => new(x / 1000, y / 1000, z / 1000);

    public static double Radians(double degrees) => degrees * Math.PI / 180;

    public static double Degrees(double radians) => radians * 180 / Math.PI;

    public static CornerState Stand(Corner corner, double height, Vector3 inner) =>
        corner.At(height, inner).Match(s => s, r => throw new Xunit.Sdk.XunitException($"out of reach: {r}"));

    public static CornerState Stand(Corner corner, double height) => Stand(corner, height, corner.Frame.TrackRodInner);
}
