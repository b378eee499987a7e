using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Where circles (or spheres) about known points meet: two places, mirrored in the line (or plane) of the centres.</summary>
/// <remarks>
/// Lengths that do not quite reach give the place between, once; centres in one line (three of them) or in one spot give none.
/// </remarks>
internal static class Intersection
{
    // Centres nearer than this share of the lengths fix no direction.
    private const double TooNear = 1e-9;

    /// <summary>The two places at the lengths given from two centres in plan.</summary>
    public static IEnumerable<double[]> InPlan(double[] a, double lengthA, double[] b, double lengthB)
    {
        var (dx, dy) = (b[0] - a[0], b[1] - a[1]);
        var d = double.Hypot(dx, dy);
        if (d <= TooNear * (lengthA + lengthB))
        {
            yield break;
        }

        var along = (d * d + lengthA * lengthA - lengthB * lengthB) / (2 * d);
        var across = Math.Sqrt(Math.Max(0, lengthA * lengthA - along * along));
        var (ux, uy) = (dx / d, dy / d);
        yield return [a[0] + along * ux - across * uy, a[1] + along * uy + across * ux];
        yield return [a[0] + along * ux + across * uy, a[1] + along * uy - across * ux];
    }

    /// <summary>The two places at the lengths given from three centres in space.</summary>
    public static IEnumerable<double[]> InSpace(double[] a, double lengthA, double[] b, double lengthB, double[] c, double lengthC)
    {
        var ex = Subtract(b, a);
        var d = Dense.Norm(ex);
        var ac = Subtract(c, a);
        var scale = lengthA + lengthB + lengthC;
        if (d <= TooNear * scale)
        {
            yield break;
        }

        Scale(ex, 1 / d);
        var i = Dense.Dot(ex, ac);
        var ey = ac.Select((v, k) => v - i * ex[k]).ToArray();
        var j = Dense.Norm(ey);
        if (j <= TooNear * scale)
        {
            yield break;
        }

        Scale(ey, 1 / j);
        double[] ez = [ex[1] * ey[2] - ex[2] * ey[1], ex[2] * ey[0] - ex[0] * ey[2], ex[0] * ey[1] - ex[1] * ey[0]];
        var x = (lengthA * lengthA - lengthB * lengthB + d * d) / (2 * d);
        var y = (lengthA * lengthA - lengthC * lengthC + i * i + j * j) / (2 * j) - i / j * x;
        var z = Math.Sqrt(Math.Max(0, lengthA * lengthA - x * x - y * y));
        yield return [.. a.Select((v, k) => v + x * ex[k] + y * ey[k] + z * ez[k])];
        yield return [.. a.Select((v, k) => v + x * ex[k] + y * ey[k] - z * ez[k])];
    }

    private static double[] Subtract(double[] a, double[] b) => [.. a.Select((v, k) => v - b[k])];

    private static void Scale(double[] v, double factor)
    {
        for (var k = 0; k < v.Length; k++)
        {
            v[k] *= factor;
        }
    }
}
