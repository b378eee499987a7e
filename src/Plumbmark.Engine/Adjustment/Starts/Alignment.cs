using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>A rigid motion, mirrored or not, that brings one set of places as near to another as it goes.</summary>
/// <remarks>
/// In space by Horn's quaternion: the rotation is the leading eigenvector of a symmetric 4 × 4 matrix (Horn 1987, Closed-form solution of
/// absolute orientation using unit quaternions; from memory). In plan the third coordinate is zero and the turn is kept to the vertical.
/// </remarks>
internal sealed class Alignment
{
    private readonly double[] _from;
    private readonly double[] _to;
    private readonly double[] _r;
    private readonly bool _isMirrored;

    private Alignment(double[] from, double[] to, double[] r, bool isMirrored) => (_from, _to, _r, _isMirrored) = (from, to, r, isMirrored);

    /// <summary>The better of the best plain and the best mirrored motion; plain when both are equal.</summary>
    public static Alignment Nearer(IReadOnlyList<double[]?> places, IReadOnlyList<double[]?> targets, int dimension)
    {
        const double Clearly = 1 - 1e-9;
        var (plain, mirrored) = (Between(places, targets, dimension, false), Between(places, targets, dimension, true));
        return mirrored.Misfit(places, targets) < Clearly * plain.Misfit(places, targets) ? mirrored : plain;
    }

    /// <summary>Sum of squared distances between moved places and targets.</summary>
    public double Misfit(IReadOnlyList<double[]?> places, IReadOnlyList<double[]?> targets) =>
        places
            .Zip(targets)
            .Where(p => p.First is not null && p.Second is not null)
            .Sum(p => Apply(p.First!).Zip(p.Second!, (a, b) => (a - b) * (a - b)).Sum());

    /// <summary>The best motion from places to targets; pairs with a null are left out.</summary>
    public static Alignment Between(IReadOnlyList<double[]?> places, IReadOnlyList<double[]?> targets, int dimension, bool isMirrored)
    {
        var pairs = places.Zip(targets).Where(p => p.First is not null && p.Second is not null).ToList();
        if (pairs.Count == 0)
        {
            return new Alignment(new double[dimension], new double[dimension], [1, 0, 0, 0, 1, 0, 0, 0, 1], isMirrored);
        }

        var from = Mean(pairs.Select(p => Mirror(p.First!, isMirrored)), dimension);
        var to = Mean(pairs.Select(p => p.Second!), dimension);

        // S_ab = Σ from_a to_b, about the means.
        var s = new double[9];
        foreach (var (first, second) in pairs)
        {
            var f = Mirror(first!, isMirrored);
            for (var a = 0; a < dimension; a++)
            {
                for (var b = 0; b < dimension; b++)
                {
                    s[a * 3 + b] += (f[a] - from[a]) * (second![b] - to[b]);
                }
            }
        }

        return new Alignment(from, to, dimension == 2 ? TurnInPlan(s) : TurnInSpace(s), isMirrored);
    }

    /// <summary>Moves a place.</summary>
    public double[] Apply(double[] place)
    {
        var p = Mirror(place, _isMirrored);
        var result = new double[p.Length];
        for (var a = 0; a < p.Length; a++)
        {
            result[a] = _to[a];
            for (var b = 0; b < p.Length; b++)
            {
                result[a] += _r[a * 3 + b] * (p[b] - _from[b]);
            }
        }

        return result;
    }

    private static double[] TurnInPlan(double[] s)
    {
        var angle = Math.Atan2(s[1] - s[3], s[0] + s[4]);
        var (sin, cos) = Math.SinCos(angle);
        return [cos, -sin, 0, sin, cos, 0, 0, 0, 1];
    }

    private static double[] TurnInSpace(double[] s)
    {
        var (xx, xy, xz, yx, yy, yz, zx, zy, zz) = (s[0], s[1], s[2], s[3], s[4], s[5], s[6], s[7], s[8]);
        double[] n =
        [
            xx + yy + zz,
            yz - zy,
            zx - xz,
            xy - yx,
            yz - zy,
            xx - yy - zz,
            xy + yx,
            zx + xz,
            zx - xz,
            xy + yx,
            -xx + yy - zz,
            yz + zy,
            xy - yx,
            zx + xz,
            yz + zy,
            -xx - yy + zz,
        ];
        var q = SymmetricEigen.Of(n, 4).Vectors[0];
        var (w, x, y, z) = (q[0], q[1], q[2], q[3]);
        return
        [
            w * w + x * x - y * y - z * z,
            2 * (x * y - w * z),
            2 * (x * z + w * y),
            2 * (x * y + w * z),
            w * w - x * x + y * y - z * z,
            2 * (y * z - w * x),
            2 * (x * z - w * y),
            2 * (y * z + w * x),
            w * w - x * x - y * y + z * z,
        ];
    }

    // The mirror image: left and right exchanged.
    private static double[] Mirror(double[] place, bool isMirrored) => isMirrored ? [.. place.Select((v, a) => a == 1 ? -v : v)] : place;

    private static double[] Mean(IEnumerable<double[]> places, int dimension)
    {
        var list = places.ToList();
        return [.. Enumerable.Range(0, dimension).Select(a => list.Average(p => p[a]))];
    }
}
