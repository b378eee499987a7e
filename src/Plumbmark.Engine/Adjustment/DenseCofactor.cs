using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>A cofactor matrix held whole.</summary>
internal sealed class DenseCofactor : Cofactor
{
    /// <summary>Unknowns up to which the whole matrix is formed: 900² numbers are 6 MB and a tenth of a second.</summary>
    public const int Limit = 900;

    private readonly double[] _q;

    public DenseCofactor(double[] q, int count) => (_q, Count) = (q, count);

    public DenseCofactor(NetworkFactor factor)
    {
        Count = factor.Order.Position.Length;
        var m = factor.Order.Count;
        var inverse = factor.Inverse ?? factor.Cholesky!.Inverse();
        if (m == Count && IsIdentity(factor.Order.Position))
        {
            _q = inverse;
            return;
        }

        _q = new double[Count * Count];
        for (var i = 0; i < Count; i++)
        {
            var p = factor.Order.Position[i];
            for (var j = 0; p >= 0 && j < Count; j++)
            {
                var q = factor.Order.Position[j];
                _q[i * Count + j] = q >= 0 ? inverse[p * m + q] : 0;
            }
        }
    }

    public override int Count { get; }

    public override double Of(int i, int j) => _q[i * Count + j];

    public override double[] Full() => _q;

    public override double[] Times(ReadOnlySpan<double> v)
    {
        var result = new double[Count];
        for (var i = 0; i < Count; i++)
        {
            if (v[i] is not 0)
            {
                Dense.AddScaled(result, v[i], Row(i));
            }
        }

        return result;
    }

    public override Cofactor Constrain(double[][] g, double[][] b)
    {
        // Q' = Q − G Hᵀ − H Gᵀ + G K Gᵀ with H = Q B, K = Bᵀ Q B; written as −G Mᵀ − M Gᵀ with M = H − G K / 2.
        var h = b.Select(column => Times(column)).ToArray();
        var m = h.Select(column => column.ToArray()).ToArray();
        for (var k = 0; k < b.Length; k++)
        {
            for (var l = 0; l < b.Length; l++)
            {
                Dense.AddScaled(m[k], -0.5 * Dense.Dot(b[l], h[k]), g[l]);
            }
        }

        var result = (double[])_q.Clone();
        for (var i = 0; i < Count; i++)
        {
            var row = result.AsSpan(i * Count, Count);
            for (var k = 0; k < g.Length; k++)
            {
                Dense.AddScaled(row, -g[k][i], m[k]);
                Dense.AddScaled(row, -m[k][i], g[k]);
            }
        }

        return new DenseCofactor(result, Count);
    }

    /// <summary>Q − q qᵀ / s.</summary>
    public DenseCofactor Minus(double[] q, double s)
    {
        var result = (double[])_q.Clone();
        for (var i = 0; i < Count; i++)
        {
            if (q[i] is not 0)
            {
                Dense.AddScaled(result.AsSpan(i * Count, Count), -q[i] / s, q);
            }
        }

        return new DenseCofactor(result, Count);
    }

    private ReadOnlySpan<double> Row(int i) => _q.AsSpan(i * Count, Count);

    private static bool IsIdentity(int[] position)
    {
        for (var i = 0; i < position.Length; i++)
        {
            if (position[i] != i)
            {
                return false;
            }
        }

        return true;
    }
}
