namespace Plumbmark.Engine.Hypotheses;

/// <summary>
/// A few parameters from many correlated values, found so that a minority of them, however wrong, has no say: the centre line of a frame
/// with a bent horn, the place of a frame in its drawing with one misprinted figure.
/// </summary>
/// <remarks>
/// <para>Model: r = A θ + e for the values that agree; others may be anything. Values come in groups that are right or wrong together.</para>
/// <para>
/// Method: (1) every smallest set of groups that fixes θ is tried and scored by the sum of min(t², 9), t a group's misfit over its
/// standard deviation: the breakdown point is a half, and for few groups the search is complete (Rousseeuw and Leroy, Robust Regression
/// and Outlier Detection, 1987, chapter 5, with the known scale in place of the median). (2) From the best of them, generalised least
/// squares with Tukey's biweight, c = 4.685 (95 % efficiency, Huber and Ronchetti, Robust Statistics, 2nd edition, 4.8), until the
/// weights rest. (3) The result with the smallest score is kept.
/// </para>
/// <para>
/// Given its weights the estimate is linear, θ = E r, so its covariance is exact: E V Eᵀ. <paramref name="scatter"/> is how much the
/// values of an undamaged frame scatter beside the measuring; it decides who has a say and is no part of that covariance.
/// </para>
/// </remarks>
/// <param name="values">The values r, metres.</param>
/// <param name="covariance">Their covariance V, square metres.</param>
/// <param name="design">The rows of A.</param>
/// <param name="groups">For each value the number of its group, counted from 0 without gaps.</param>
/// <param name="scatter">Standard deviation of the values of an undamaged frame beside the measuring, metres.</param>
public sealed class RobustLinearFit(double[] values, double[,] covariance, double[][] design, int[] groups, double scatter)
{
    private const double TukeyC = 4.685;
    private const double MostSquared = 9; // three standard deviations: beyond, a group counts as wrong, however wrong
    private const double LeastWeight = 1e-3; // a thousandth of a say is none
    private const double LeastShareBesideOthers = 1e-9; // of a parameter's information, beside the other parameters
    private const int MostSets = 40_000; // bounds the search: three of sixty groups
    private const int RefinedSets = 12;
    private const int MostRounds = 30;

    private readonly int _parameters = design.Length == 0 ? 0 : design[0].Length;
    private readonly int _groupCount = groups.Length == 0 ? 0 : groups.Max() + 1;
    private double[] _weights = [];

    /// <summary>How much say each group has, 0 to 1; empty before <see cref="Solve"/> succeeded.</summary>
    public IReadOnlyList<double> Weights => _weights;

    /// <summary>θ = E r with the weights found; null when the values do not fix θ.</summary>
    public double[,]? Estimator { get; private set; }

    /// <summary>Finds the weights and the estimator. False when the values do not fix every parameter: a fact, not a failure.</summary>
    public bool Solve()
    {
        var best = double.PositiveInfinity;
        foreach (var start in StartsBestFirst().Take(RefinedSets))
        {
            if (Refined(start) is { } weights && EstimatorFor(weights) is { } estimator)
            {
                var score = Score(Times(estimator));
                if (score < best - 1e-9)
                {
                    (best, _weights, Estimator) = (score, weights, estimator);
                }
            }
        }

        return Estimator is not null;
    }

    /// <summary>The estimator that gives some groups no say, so that they can be held against the others; null when those do not fix θ.</summary>
    public double[,]? EstimatorWithout(params ReadOnlySpan<int> without)
    {
        var weights = (double[])_weights.Clone();
        foreach (var group in without)
        {
            weights[group] = 0;
        }

        return weights.SequenceEqual(_weights) ? Estimator : EstimatorFor(weights);
    }

    private IEnumerable<double[]> StartsBestFirst()
    {
        for (var size = 1; size <= Math.Min(_groupCount, _parameters); size++)
        {
            var starts = Sets(size, 0, new int[size], 0)
                .Take(MostSets)
                .Select(set => StartFrom(set))
                .OfType<double[]>()
                .Select(theta => (Theta: theta, Score: Score(theta)))
                .OrderBy(s => s.Score)
                .Take(RefinedSets)
                .Select(s => s.Theta)
                .ToList();
            if (starts.Count > 0)
            {
                return starts;
            }
        }

        return [];
    }

    private IEnumerable<int[]> Sets(int size, int filled, int[] set, int next)
    {
        if (filled == size)
        {
            yield return set;
            yield break;
        }

        for (var g = next; g < _groupCount; g++)
        {
            set[filled] = g;
            foreach (var whole in Sets(size, filled + 1, set, g + 1))
            {
                yield return whole;
            }
        }
    }

    /// <summary>Least squares on the set alone, each value weighted by its own variance.</summary>
    private double[]? StartFrom(int[] set)
    {
        var normal = new double[_parameters, _parameters];
        var rhs = new double[_parameters];
        for (var r = 0; r < values.Length; r++)
        {
            if (Array.IndexOf(set, groups[r]) < 0)
            {
                continue;
            }

            var weight = 1 / Variance(r);
            for (var p = 0; p < _parameters; p++)
            {
                rhs[p] += weight * design[r][p] * values[r];
                for (var q = 0; q <= p; q++)
                {
                    normal[p, q] += weight * design[r][p] * design[r][q];
                }
            }
        }

        return Cholesky.Of(normal, LeastShareBesideOthers)?.Solve(rhs);
    }

    private double[]? Refined(double[] theta)
    {
        var weights = WeightsFor(theta);
        for (var round = 0; round < MostRounds; round++)
        {
            if (EstimatorFor(weights) is not { } estimator)
            {
                return null;
            }

            var next = WeightsFor(Times(estimator));
            var change = weights.Zip(next, (a, b) => Math.Abs(a - b)).Max();
            weights = next;
            if (change < LeastWeight)
            {
                break;
            }
        }

        return weights;
    }

    /// <summary>E = (Aᵀ W A)⁻¹ Aᵀ W with W the inverse of the covariance, each value's noise enlarged by one over the root of its weight.</summary>
    private double[,]? EstimatorFor(double[] weights)
    {
        var rows = Enumerable.Range(0, values.Length).Where(r => weights[groups[r]] >= LeastWeight).ToArray();
        var n = rows.Length;
        var noise = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var (a, b) = (rows[i], rows[j]);
                var shared = a == b ? Variance(a) : covariance[a, b];
                noise[i, j] = shared / Math.Sqrt(weights[groups[a]] * weights[groups[b]]);

                // Where the values' datum is free their covariance is singular along A; adding to it along A changes no estimate.
                for (var p = 0; p < _parameters; p++)
                {
                    noise[i, j] += design[a][p] * design[b][p];
                }
            }
        }

        if (n == 0 || Cholesky.Of(noise, 0) is not { } whitening)
        {
            return null;
        }

        var columns = Enumerable.Range(0, _parameters).Select(p => whitening.Solve([.. rows.Select(r => design[r][p])])).ToArray();
        var normal = new double[_parameters, _parameters];
        for (var p = 0; p < _parameters; p++)
        {
            for (var q = 0; q <= p; q++)
            {
                normal[p, q] = normal[q, p] = rows.Select((r, i) => design[r][q] * columns[p][i]).Sum();
            }
        }

        if (Cholesky.Of(normal, LeastShareBesideOthers) is not { } factor)
        {
            return null;
        }

        var estimator = new double[_parameters, values.Length];
        for (var i = 0; i < n; i++)
        {
            var column = factor.Solve([.. columns.Select(c => c[i])]);
            for (var p = 0; p < _parameters; p++)
            {
                estimator[p, rows[i]] = column[p];
            }
        }

        return estimator;
    }

    private double[] Times(double[,] estimator)
    {
        var theta = new double[_parameters];
        for (var p = 0; p < _parameters; p++)
        {
            for (var r = 0; r < values.Length; r++)
            {
                theta[p] += estimator[p, r] * values[r];
            }
        }

        return theta;
    }

    private double[] WeightsFor(double[] theta)
    {
        var (squares, counts) = Misfits(theta);
        return
        [
            .. squares.Zip(
                counts,
                (square, count) =>
                {
                    var u2 = square / Math.Max(1, count) / (TukeyC * TukeyC);
                    return u2 >= 1 ? 0 : (1 - u2) * (1 - u2);
                }
            ),
        ];
    }

    private double Score(double[] theta)
    {
        var (squares, counts) = Misfits(theta);
        return squares.Zip(counts, (square, count) => count == 0 ? 0 : Math.Min(square / count, MostSquared)).Sum();
    }

    private (double[] Squares, int[] Counts) Misfits(double[] theta)
    {
        var squares = new double[_groupCount];
        var counts = new int[_groupCount];
        for (var r = 0; r < values.Length; r++)
        {
            var misfit = values[r];
            for (var p = 0; p < _parameters; p++)
            {
                misfit -= design[r][p] * theta[p];
            }

            squares[groups[r]] += misfit * misfit / Variance(r);
            counts[groups[r]]++;
        }

        return (squares, counts);
    }

    private double Variance(int row) => covariance[row, row] + (scatter * scatter);
}
