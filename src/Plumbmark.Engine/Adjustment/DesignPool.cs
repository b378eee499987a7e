namespace Plumbmark.Engine.Adjustment;

/// <summary>Many readings that could be taken, each with what it would do, kept up to date while some are taken.</summary>
/// <remarks>
/// Of each equation the column c = Q aᵀ is kept. Taking a reading with column c_b and variance s_b turns it into c − c_b (c_b · a) / s_b: a few hundred
/// multiplications for each candidate instead of a product with the whole covariance.
/// </remarks>
public sealed class DesignPool
{
    private readonly List<(int Candidate, int[] At, double[] A, double Variance, double[] C)> _equations = [];
    private readonly (int First, int Count)[] _ofCandidate;
    private readonly double[] _onCoordinates;

    /// <summary>A pool over a design.</summary>
    /// <param name="design">What is known so far.</param>
    /// <param name="candidates">The readings that could be taken.</param>
    public DesignPool(NetworkDesign design, IReadOnlyList<Observation> candidates)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(candidates);
        Candidates = candidates;
        _ofCandidate = new (int, int)[candidates.Count];
        _onCoordinates = design.OnCoordinates();
        for (var k = 0; k < candidates.Count; k++)
        {
            var first = _equations.Count;
            foreach (var (a, variance) in design.Equations(candidates[k]))
            {
                int[] at = [.. Enumerable.Range(0, a.Length).Where(i => a[i] is not 0)];
                _equations.Add((k, at, [.. at.Select(i => a[i])], variance, design.CovarianceWith(a)));
            }

            _ofCandidate[k] = (first, _equations.Count - first);
        }
    }

    /// <summary>The readings that could be taken.</summary>
    public IReadOnlyList<Observation> Candidates { get; }

    /// <summary>By how much the sum of the variances of all coordinates would fall if the candidate were taken now, m².</summary>
    public double TraceReduction(int candidate)
    {
        var (first, count) = _ofCandidate[candidate];
        var sum = 0.0;
        for (var e = first; e < first + count; e++)
        {
            // Of a repeated drop the two equations concern different axes; what they share is small and counted once too often.
            var (_, at, a, variance, c) = _equations[e];
            var (square, s) = (0.0, variance + Dot(at, a, c));
            for (var i = 0; i < c.Length; i++)
            {
                square += _onCoordinates[i] * c[i] * c[i];
            }

            sum += square / s;
        }

        return sum;
    }

    /// <summary>Takes a candidate: all others see it.</summary>
    public void Take(int candidate)
    {
        var (first, count) = _ofCandidate[candidate];
        for (var e = first; e < first + count; e++)
        {
            var (_, at, a, variance, c) = _equations[e];
            var (taken, s) = ((double[])c.Clone(), variance + Dot(at, a, c));
            foreach (var other in _equations)
            {
                // Own equations too: what is taken twice counts as a second reading of the same kind.
                var share = Dot(other.At, other.A, taken) / s;
                if (share is not 0)
                {
                    LeastSquares.Dense.AddScaled(other.C, -share, taken);
                }
            }
        }
    }

    private static double Dot(int[] at, double[] a, double[] c)
    {
        var sum = 0.0;
        for (var i = 0; i < at.Length; i++)
        {
            sum += a[i] * c[at[i]];
        }

        return sum;
    }
}
