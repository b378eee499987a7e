using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Fits;

/// <summary>A place in a plane, or a step between two such places.</summary>
/// <remarks><see langword="default"/> is the origin. Both values are metres in this program; a fit works in any one length unit.</remarks>
/// <param name="X">First coordinate, metres.</param>
/// <param name="Y">Second coordinate, metres.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Point2(double X, double Y)
{
    /// <summary>Distance from the origin, metres.</summary>
    public double Norm => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Whether neither value is NaN or infinite.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y);

    /// <summary>The scalar product.</summary>
    public double Dot(Point2 other) => (X * other.X) + (Y * other.Y);

    /// <summary>The area of the parallelogram, positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Point2 other) => (X * other.Y) - (Y * other.X);

    /// <summary>Adds a step.</summary>
    public static Point2 operator +(Point2 a, Point2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>The step from <paramref name="b"/> to <paramref name="a"/>.</summary>
    public static Point2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Lengthens a step.</summary>
    public static Point2 operator *(double factor, Point2 a) => new(factor * a.X, factor * a.Y);
}
