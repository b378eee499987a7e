using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Cofactors of a large network: those of neighbours are at hand, any other is solved for when it is asked.</summary>
internal sealed class EnvelopeCofactor : Cofactor
{
    private readonly UnknownOrder _order;
    private readonly EnvelopeCholesky _factor;
    private readonly EnvelopeCholesky _selected;

    // The constraint Q' = Q − G Mᵀ − M Gᵀ; empty arrays when the datum is complete.
    private readonly double[][] _g;
    private readonly double[][] _m;
    private int _column = -1;
    private double[] _columnValues = [];

    public EnvelopeCofactor(UnknownOrder order, EnvelopeCholesky factor)
        : this(order, factor, factor.SelectedInverse(), [], []) { }

    private EnvelopeCofactor(UnknownOrder order, EnvelopeCholesky factor, EnvelopeCholesky selected, double[][] g, double[][] m) =>
        (_order, _factor, _selected, _g, _m) = (order, factor, selected, g, m);

    public override int Count => _order.Position.Length;

    public override double Of(int i, int j)
    {
        var value = Unconstrained(i, j);
        for (var k = 0; k < _g.Length; k++)
        {
            value -= _g[k][i] * _m[k][j] + _m[k][i] * _g[k][j];
        }

        return value;
    }

    public override double[] Times(ReadOnlySpan<double> v)
    {
        var result = UnconstrainedTimes(v);
        for (var k = 0; k < _g.Length; k++)
        {
            Dense.AddScaled(result, -Dense.Dot(_m[k], v), _g[k]);
            Dense.AddScaled(result, -Dense.Dot(_g[k], v), _m[k]);
        }

        return result;
    }

    public override double[] Full()
    {
        var full = new double[Count * Count];
        var unit = new double[Count];
        for (var i = 0; i < Count; i++)
        {
            unit[i] = 1;
            Times(unit).CopyTo(full, i * Count);
            unit[i] = 0;
        }

        return full;
    }

    public override Cofactor Constrain(double[][] g, double[][] b)
    {
        var h = b.Select(column => UnconstrainedTimes(column)).ToArray();
        var m = h.Select(column => column.ToArray()).ToArray();
        for (var k = 0; k < b.Length; k++)
        {
            for (var l = 0; l < b.Length; l++)
            {
                Dense.AddScaled(m[k], -0.5 * Dense.Dot(b[l], h[k]), g[l]);
            }
        }

        return new EnvelopeCofactor(_order, _factor, _selected, g, m);
    }

    private double Unconstrained(int i, int j)
    {
        var (p, q) = (_order.Position[i], _order.Position[j]);
        if (p < 0 || q < 0)
        {
            return 0;
        }

        var (high, low) = p >= q ? (p, q) : (q, p);
        return low >= _selected.FirstOf(high) ? _selected[high, low] : Column(i)[j];
    }

    // The last column asked for is kept: questions come point by point.
    private double[] Column(int i)
    {
        if (_column != i)
        {
            var unit = new double[Count];
            unit[i] = 1;
            (_column, _columnValues) = (i, UnconstrainedTimes(unit));
        }

        return _columnValues;
    }

    private double[] UnconstrainedTimes(ReadOnlySpan<double> v)
    {
        var work = new double[_order.Count];
        for (var i = 0; i < Count; i++)
        {
            if (_order.Position[i] >= 0)
            {
                work[_order.Position[i]] = v[i];
            }
        }

        _factor.Solve(work);
        var result = new double[Count];
        for (var i = 0; i < Count; i++)
        {
            result[i] = _order.Position[i] >= 0 ? work[_order.Position[i]] : 0;
        }

        return result;
    }
}
