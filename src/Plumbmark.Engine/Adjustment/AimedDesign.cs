using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>
/// A design that is aimed at a few sums of coordinates: how well each is known, and what taking or giving back any of many candidate readings would do
/// to it.
/// </summary>
/// <remarks>
/// Of each sum g the column h = Q g is kept, so that a reading with derivatives a (of which only a few differ from zero) and variance σ² lowers its
/// variance by (a · h)² / (σ² + a Q aᵀ): a handful of multiplications for each candidate and sum. Giving back is the same with −σ². Mutable: taking
/// a reading is one rank-one step on Q and on every h.
/// </remarks>
public sealed class AimedDesign
{
    private readonly NetworkDesign _origin;
    private readonly Equation[][] _candidates;
    private readonly int _n;
    private double[] _q;
    private double[][] _g = [];
    private double[][] _h = [];

    /// <summary>Starts from a design.</summary>
    /// <param name="design">What is known so far.</param>
    /// <param name="candidates">The readings that could be taken, each as often as wanted.</param>
    public AimedDesign(NetworkDesign design, IReadOnlyList<Observation> candidates)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(candidates);
        _origin = design;
        _q = design.CopyOfCovariance();
        _n = design.UnknownCount;
        _candidates = [.. candidates.Select(c => design.Equations(c).Select(e => Equation.Of(e.A, e.Variance)).ToArray())];
    }

    /// <summary>How many sums it is aimed at.</summary>
    public int TargetCount => _g.Length;

    /// <summary>The design as it stands now.</summary>
    public NetworkDesign Now() => _origin.WithCovariance((double[])_q.Clone());

    /// <summary>Aims at sums of coordinates, each given by its factors in the order of <see cref="NetworkDesign.Coordinates"/>.</summary>
    public void Aim(IReadOnlyList<double[]> gradients)
    {
        ArgumentNullException.ThrowIfNull(gradients);
        _g = [.. gradients.Select(g => _origin.OnUnknowns(g))];
        _h = new double[_g.Length][];
        for (var t = 0; t < _g.Length; t++)
        {
            _h[t] = Times(_g[t]);
        }
    }

    /// <summary>Variance of a sum, m².</summary>
    public double Variance(int target) => Dense.Dot(_g[target], _h[target]);

    /// <summary>By how much each sum's variance would fall if the candidate were taken now, m².</summary>
    public void WhenTaken(int candidate, Span<double> falls) => Falls(_candidates[candidate], 1, falls);

    /// <summary>By how much each sum's variance would rise if the candidate, which has been taken, were given back, m².</summary>
    public void WhenGivenBack(int candidate, Span<double> rises)
    {
        Falls(_candidates[candidate], -1, rises);
        for (var t = 0; t < _g.Length; t++)
        {
            rises[t] = -rises[t];
        }
    }

    /// <summary>Takes a candidate.</summary>
    public void Take(int candidate) => Step(_candidates[candidate], 1);

    /// <summary>Gives back a candidate that has been taken.</summary>
    public void GiveBack(int candidate) => Step(_candidates[candidate], -1);

    /// <summary>What must be kept to come back to this moment with <see cref="Restore"/>.</summary>
    public Moment Keep() => new Moment((double[])_q.Clone(), _g, [.. _h.Select(h => (double[])h.Clone())]);

    /// <summary>Comes back to a moment kept; once for each.</summary>
    public void Restore(Moment moment)
    {
        ArgumentNullException.ThrowIfNull(moment);
        (_q, _g, _h) = (moment.Q, moment.G, moment.H);
    }

    private void Falls(Equation[] equations, int sign, Span<double> falls)
    {
        falls = falls[.._g.Length];
        falls.Clear();
        if (equations.Length == 0)
        {
            return;
        }

        var first = equations[0];
        var s = (sign * first.Variance) + first.Spread(_q, _n);
        for (var t = 0; t < falls.Length; t++)
        {
            var d = first.Dot(_h[t]);
            falls[t] = d * d / s;
        }

        // A second equation (of a drop, the other axis) meets what the first has left.
        foreach (var second in equations.AsSpan(1))
        {
            var shared = first.Shared(second, _q, _n) / s;
            var left = (sign * second.Variance) + second.Spread(_q, _n) - (shared * shared * s);
            for (var t = 0; t < falls.Length; t++)
            {
                var d = second.Dot(_h[t]) - (shared * first.Dot(_h[t]));
                falls[t] += d * d / left;
            }
        }
    }

    private void Step(Equation[] equations, int sign)
    {
        foreach (var equation in equations)
        {
            var c = new double[_n];
            equation.AddTo(c, _q, _n);
            var s = (sign * equation.Variance) + equation.Dot(c);
            foreach (var h in _h)
            {
                Dense.AddScaled(h, -equation.Dot(h) / s, c);
            }

            for (var i = 0; i < _n; i++)
            {
                if (c[i] is not 0)
                {
                    Dense.AddScaled(_q.AsSpan(i * _n, _n), -c[i] / s, c);
                }
            }
        }
    }

    private double[] Times(double[] g)
    {
        var result = new double[_n];
        for (var i = 0; i < _n; i++)
        {
            if (g[i] is not 0)
            {
                Dense.AddScaled(result, g[i], _q.AsSpan(i * _n, _n));
            }
        }

        return result;
    }

    /// <summary>All that a design holds at a moment; only a design can make or read one.</summary>
    public sealed class Moment
    {
        internal Moment(double[] q, double[][] g, double[][] h) => (Q, G, H) = (q, g, h);

        internal double[] Q { get; }

        internal double[][] G { get; }

        internal double[][] H { get; }
    }

    /// <summary>One equation of a reading: its few derivatives, by unknown, and its variance.</summary>
    private sealed record Equation(int[] At, double[] A, double Variance)
    {
        public static Equation Of(double[] dense, double variance)
        {
            int[] at = [.. Enumerable.Range(0, dense.Length).Where(i => dense[i] is not 0)];
            return new Equation(at, [.. at.Select(i => dense[i])], variance);
        }

        /// <summary>a · x.</summary>
        public double Dot(double[] x)
        {
            var sum = 0.0;
            for (var i = 0; i < At.Length; i++)
            {
                sum += A[i] * x[At[i]];
            }

            return sum;
        }

        /// <summary>a Q aᵀ.</summary>
        public double Spread(double[] q, int n) => Shared(this, q, n);

        /// <summary>a Q bᵀ.</summary>
        public double Shared(Equation other, double[] q, int n)
        {
            var sum = 0.0;
            for (var i = 0; i < At.Length; i++)
            {
                for (var j = 0; j < other.At.Length; j++)
                {
                    sum += A[i] * other.A[j] * q[(At[i] * n) + other.At[j]];
                }
            }

            return sum;
        }

        /// <summary>Adds Q aᵀ.</summary>
        public void AddTo(double[] result, double[] q, int n)
        {
            for (var i = 0; i < At.Length; i++)
            {
                Dense.AddScaled(result, A[i], q.AsSpan(At[i] * n, n));
            }
        }
    }
}
