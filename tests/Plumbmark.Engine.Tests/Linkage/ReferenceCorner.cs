using Plumbmark.Engine.Linkage;
using Plumbmark.Testing;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>The corner of reference/linkage/double_wishbone_check.csv.</summary>
internal static class ReferenceCorner
{
    public static CornerPoints Points => ReferenceWishbone.Points;

    public static Vector3 Millimetres(double x, double y, double z) => new(x / 1000, y / 1000, z / 1000);

    public static double Radians(double degrees) => degrees * Math.PI / 180;

    public static double Degrees(double radians) => radians * 180 / Math.PI;

    public static CornerState Stand(Corner corner, double height, Vector3 inner) =>
        corner.At(height, inner).Match(s => s, r => throw new Xunit.Sdk.XunitException($"out of reach: {r}"));

    public static CornerState Stand(Corner corner, double height) => Stand(corner, height, corner.Frame.TrackRodInner);
}
