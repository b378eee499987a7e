using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Fits;

/// <summary>A place in space, or a step between two such places.</summary>
/// <remarks><see langword="default"/> is the origin. All values are metres in this program; a fit works in any one length unit.</remarks>
/// <param name="X">First coordinate, metres.</param>
/// <param name="Y">Second coordinate, metres.</param>
/// <param name="Z">Third coordinate, metres.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>Distance from the origin, metres.</summary>
    public double Norm => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    /// <summary>Whether no value is NaN or infinite.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z);

    /// <summary>The same direction at length 1. The caller makes sure that the length is not zero.</summary>
    public Point3 Unit() => (1 / Norm) * this;

    /// <summary>The scalar product.</summary>
    public double Dot(Point3 other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>The vector product, right-handed.</summary>
    public Point3 Cross(Point3 other) => new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>Two unit directions square to this one and to each other; with it they are right-handed.</summary>
    internal (Point3 First, Point3 Second) SquareDirections()
    {
        // The axis least along this direction leaves the longest product.
        var (x, y, z) = (Math.Abs(X), Math.Abs(Y), Math.Abs(Z));
        var axis =
            x <= y && x <= z ? new Point3(1, 0, 0)
            : y <= z ? new Point3(0, 1, 0)
            : new Point3(0, 0, 1);
        var first = axis.Cross(this).Unit();
        return (first, Unit().Cross(first));
    }

    /// <summary>Adds a step.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The step from <paramref name="b"/> to <paramref name="a"/>.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Lengthens a step.</summary>
    public static Point3 operator *(double factor, Point3 a) => new(factor * a.X, factor * a.Y, factor * a.Z);
}
