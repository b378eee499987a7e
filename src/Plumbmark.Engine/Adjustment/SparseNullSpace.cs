using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Null vectors of a large sparse normal matrix, by inverse iteration on a block of vectors.</summary>
/// <remarks>
/// M = D N D + ε I with a unit diagonal; iterating with M⁻¹ leaves the directions whose eigenvalue is nothing beside ε. The block
/// doubles until it holds a direction that is not null. A network as long as five hundred stations has honest eigenvalues of 1e-11, so the line is drawn
/// below that.
/// </remarks>
internal static class SparseNullSpace
{
    private const double Shift = 1e-14;
    private const double NullEigenvalue = 1e-13;
    private const int Rounds = 4;

    /// <summary>The null vectors, of unit length in unscaled unknowns.</summary>
    /// <param name="normal">N, not factored; it is changed.</param>
    public static double[][] Of(EnvelopeCholesky normal)
    {
        var n = normal.Size;
        var scale = Equilibrate(normal);
        var shifted = new EnvelopeCholesky(normal);
        for (var i = 0; i < n; i++)
        {
            shifted[i, i] += Shift;
        }

        if (!shifted.TryFactor(Shift / 100))
        {
            return [];
        }

        for (var k = 8; ; k *= 2)
        {
            var block = Iterate(shifted, n, Math.Min(k, n));
            var (values, vectors) = Ritz(normal, block);
            var isNull = values.Count(v => v < NullEigenvalue);
            if (isNull < block.Length || block.Length == n)
            {
                return InnerConstraints.Orthonormal([
                    .. vectors.Where((_, i) => values[i] < NullEigenvalue).Select(v => v.Select((c, i) => c * scale[i]).ToArray()),
                ]);
            }
        }
    }

    private static double[] Equilibrate(EnvelopeCholesky normal)
    {
        var scale = Enumerable.Range(0, normal.Size).Select(i => normal[i, i] > 0 ? 1 / Math.Sqrt(normal[i, i]) : 1).ToArray();
        for (var i = 0; i < normal.Size; i++)
        {
            for (var j = normal.FirstOf(i); j <= i; j++)
            {
                normal[i, j] *= scale[i] * scale[j];
            }
        }

        return scale;
    }

    private static double[][] Iterate(EnvelopeCholesky shifted, int n, int count)
    {
        // Any vectors serve that are not at right angles to what is sought.
        var block = Enumerable
            .Range(0, count)
            .Select(k => Enumerable.Range(0, n).Select(i => Math.Sin(1 + 12.9898 * i * (k + 1) + 7.1 * k)).ToArray())
            .ToArray();
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var vector in block)
            {
                shifted.Solve(vector);
            }

            block = InnerConstraints.Orthonormal(block);
        }

        return block;
    }

    private static (double[] Values, double[][] Vectors) Ritz(EnvelopeCholesky normal, double[][] block)
    {
        var k = block.Length;
        var products = block.Select(v => Times(normal, v)).ToArray();
        var small = new double[k * k];
        for (var a = 0; a < k; a++)
        {
            for (var b = 0; b <= a; b++)
            {
                small[a * k + b] = Dense.Dot(block[a], products[b]);
            }
        }

        var eigen = SymmetricEigen.Of(small, k);
        var vectors = eigen.Vectors.Select(e =>
        {
            var v = new double[block[0].Length];
            for (var a = 0; a < k; a++)
            {
                Dense.AddScaled(v, e[a], block[a]);
            }

            return v;
        });
        return (eigen.Values, [.. vectors]);
    }

    private static double[] Times(EnvelopeCholesky normal, double[] v)
    {
        var result = new double[v.Length];
        for (var i = 0; i < v.Length; i++)
        {
            for (var j = normal.FirstOf(i); j <= i; j++)
            {
                result[i] += normal[i, j] * v[j];
                result[j] += i == j ? 0 : normal[i, j] * v[i];
            }
        }

        return result;
    }
}
