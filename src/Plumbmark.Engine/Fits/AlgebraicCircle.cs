using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Fits;

/// <summary>
/// A circle through points in one pass, without a search: where the search of <see cref="BestFit.Circle2"/> starts. Each variant minimises
/// some other sum than that of squared distances, so none of them is the answer.
/// </summary>
/// <remarks>
/// With moments about the centroid, z = x² + y² and the equation A z + B x + C y + D = 0: Kåsa (IEEE Trans. Instrum. Meas. 25, 1976) sets A = 1,
/// Pratt (SIGGRAPH 1987) sets B² + C² - 4 A D = 1, Taubin (IEEE Trans. PAMI 13, 1991) sets 4 A² z̄ + 4 A (B x̄ + C ȳ) + B² + C² = 1. The last two take the smallest root
/// of a quartic, found by Newton's method from 0 (Chernov, Circular and Linear Regression, 2010, ch. 5). Kåsa makes short arcs too small; the others do not.
/// </remarks>
public static class AlgebraicCircle
{
    private const int MostNewtonSteps = 60;

    /// <summary>Kåsa's circle, or <see langword="null"/> for points on a line.</summary>
    public static Circle2? Kasa(ReadOnlySpan<Point2> points) => Moments.Of(points).Circle(0, 0);

    /// <summary>Pratt's circle, or <see langword="null"/> for points on a line.</summary>
    public static Circle2? Pratt(ReadOnlySpan<Point2> points)
    {
        var m = Moments.Of(points);
        var mz2 = m.Z * m.Z;
        var a2 = (4 * m.Covariance) - (3 * mz2) - m.Zz;
        var a1 = (m.Zz * m.Z) + (4 * m.Covariance * m.Z) - (m.Xz * m.Xz) - (m.Yz * m.Yz) - (mz2 * m.Z);
        var a0 = (m.Xz * m.Xz * m.Yy) + (m.Yz * m.Yz * m.Xx) - (m.Zz * m.Covariance) - (2 * m.Xz * m.Yz * m.Xy) + (mz2 * m.Covariance);
        var root = SmallestRoot([a0, a1, a2, 0, 4]);
        return m.Circle(root, 2 * root);
    }

    /// <summary>Taubin's circle, or <see langword="null"/> for points on a line.</summary>
    public static Circle2? Taubin(ReadOnlySpan<Point2> points)
    {
        var m = Moments.Of(points);
        var varianceZ = m.Zz - (m.Z * m.Z);
        var a3 = 4 * m.Z;
        var a2 = (-3 * m.Z * m.Z) - m.Zz;
        var a1 = (varianceZ * m.Z) + (4 * m.Covariance * m.Z) - (m.Xz * m.Xz) - (m.Yz * m.Yz);
        var a0 = (m.Xz * ((m.Xz * m.Yy) - (m.Yz * m.Xy))) + (m.Yz * ((m.Yz * m.Xx) - (m.Xz * m.Xy))) - (varianceZ * m.Covariance);
        return m.Circle(SmallestRoot([a0, a1, a2, a3, 0]), 0);
    }

    private static double SmallestRoot(ReadOnlySpan<double> coefficients)
    {
        var x = 0.0;
        for (var step = 0; step < MostNewtonSteps; step++)
        {
            var (value, slope) = (0.0, 0.0);
            for (var k = coefficients.Length - 1; k >= 0; k--)
            {
                slope = (slope * x) + value;
                value = (value * x) + coefficients[k];
            }

            var next = x - (value / slope);
            if (!double.IsFinite(next) || next == x)
            {
                break;
            }

            x = next;
        }

        return x;
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Moments(
        Point2 Mean,
        double Xx,
        double Yy,
        double Xy,
        double Xz,
        double Yz,
        double Zz,
        double Z,
        double Covariance
    )
    {
        public static Moments Of(ReadOnlySpan<Point2> points)
        {
            var mean = default(Point2);
            foreach (var p in points)
            {
                mean += 1.0 / points.Length * p;
            }

            double xx = 0,
                yy = 0,
                xy = 0,
                xz = 0,
                yz = 0,
                zz = 0;
            foreach (var p in points)
            {
                var q = p - mean;
                var z = q.Dot(q);
                (xx, yy, xy) = (xx + (q.X * q.X), yy + (q.Y * q.Y), xy + (q.X * q.Y));
                (xz, yz, zz) = (xz + (q.X * z), yz + (q.Y * z), zz + (z * z));
            }

            var n = points.Length;
            (xx, yy, xy, xz, yz, zz) = (xx / n, yy / n, xy / n, xz / n, yz / n, zz / n);
            return new Moments(mean, xx, yy, xy, xz, yz, zz, xx + yy, (xx * yy) - (xy * xy));
        }

        public Circle2? Circle(double root, double extra)
        {
            var determinant = (root * root) - (root * Z) + Covariance;
            // Relative to its terms a few roundings of zero: the points lie on a line.
            if (!(Math.Abs(determinant) > 1e-14 * Z * Z))
            {
                return null;
            }

            var x = ((Xz * (Yy - root)) - (Yz * Xy)) / determinant / 2;
            var y = ((Yz * (Xx - root)) - (Xz * Xy)) / determinant / 2;
            return new Circle2(Mean + new Point2(x, y), Math.Sqrt((x * x) + (y * y) + Z + extra));
        }
    }
}
