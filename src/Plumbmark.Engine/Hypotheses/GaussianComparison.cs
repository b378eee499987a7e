namespace Plumbmark.Engine.Hypotheses;

/// <summary>
/// Measured values that would all be zero if nothing were wrong, with their full covariance, compared with effects that may explain them,
/// whatever a few nuisance motions may be.
/// </summary>
/// <remarks>
/// <para>Model: r = P θ + D a + e, e ~ N(0, V). r - values - m; P - nuisance columns; θ - their unknown sizes, without prior; D - effects; a - amounts.</para>
/// <para>
/// Generalised least squares: with L Lᵀ = V everything is whitened by L⁻¹ and the nuisance is projected out; then
/// â = (Dᵀ M D)⁻¹ Dᵀ M r, cov â = (Dᵀ M D)⁻¹, and the squared misfit falls by âᵀ Dᵀ M r (Rao, Linear Statistical Inference, 2nd edition,
/// 4a and 4i). Adding κ P Pᵀ to V changes none of this, because θ is free; it makes V regular when the values' datum is free.
/// </para>
/// <para>Limits: the covariance is taken as known; effects are small enough to be linear.</para>
/// </remarks>
public sealed class GaussianComparison
{
    // One square metre for a column whose largest entry is 1: far beyond any motion of a frame, and seven digits above a tape's variance.
    private const double NuisanceVarianceMetres2 = 1;

    // (1 µm)²: keeps values that share all their noise apart; a thousandth of what a tape shows.
    private const double RidgeMetres2 = 1e-12;

    private const double RidgeStep = 100;
    private const double LargestRidgeShare = 1e-3; // of the largest variance: beyond it the covariance is not rounded but wrong

    // A column of which less than this share is left beside the others cannot be told from them.
    internal const double LeastShareBesideOthers = 1e-6;

    private readonly Cholesky _whitening;
    private readonly List<double[]> _nuisance;
    private readonly double[] _values;

    /// <summary>Prepares the comparison.</summary>
    /// <param name="values">The values r, metres.</param>
    /// <param name="covariance">Their covariance V, square metres; may be singular along the nuisance.</param>
    /// <param name="nuisance">The columns of P; those that depend on the others count once.</param>
    public GaussianComparison(ReadOnlySpan<double> values, double[,] covariance, IEnumerable<double[]> nuisance)
    {
        var columns = nuisance.Select(Scaled).OfType<double[]>().ToList();
        _whitening = Whitening(covariance, columns);
        _nuisance = Orthonormal(columns.Select(c => _whitening.Whiten(c)));
        _values = Project(_whitening.Whiten(values));
        Freedom = values.Length - _nuisance.Count;
        ChiSquareOfNothing = Dot(_values, _values);
    }

    /// <summary>How many independent values there are beside the nuisance.</summary>
    public int Freedom { get; }

    /// <summary>The squared misfit when there is no effect; of chi-square law with <see cref="Freedom"/> degrees if that is so.</summary>
    public double ChiSquareOfNothing { get; }

    /// <summary>Makes effects ready for fitting, alone or together.</summary>
    /// <param name="columns">For each effect what one unit of it does to each value.</param>
    public EffectSet Effects(IReadOnlyList<double[]> columns)
    {
        var prepared = columns.Select(c => Project(_whitening.Whiten(c))).ToArray();
        var gram = new double[prepared.Length, prepared.Length];
        for (var i = 0; i < prepared.Length; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                gram[i, j] = gram[j, i] = Dot(prepared[i], prepared[j]);
            }
        }

        return new EffectSet(gram, [.. prepared.Select(c => Dot(c, _values))]);
    }

    /// <summary>Standard uncertainty of the amount of one effect fitted alone, in the effect's own unit; infinite when the values cannot show it.</summary>
    public double UncertaintyAlone(ReadOnlySpan<double> column)
    {
        var prepared = Project(_whitening.Whiten(column));
        var information = Dot(prepared, prepared);
        return information > EffectSet.LeastInformation ? 1 / Math.Sqrt(information) : double.PositiveInfinity;
    }

    /// <summary>The amount of one effect fitted alone as a weighted sum of the values: â = wᵀ r; null when the values cannot show it.</summary>
    public double[]? WeightsOf(ReadOnlySpan<double> column)
    {
        var prepared = Project(_whitening.Whiten(column));
        var information = Dot(prepared, prepared);
        return information > EffectSet.LeastInformation ? [.. _whitening.Unwhiten(prepared).Select(w => w / information)] : null;
    }

    private double[] Project(double[] whitened)
    {
        foreach (var q in _nuisance)
        {
            AddMultiple(whitened, q, -Dot(q, whitened));
        }

        return whitened;
    }

    /// <summary>Modified Gram-Schmidt, each column twice (Golub and Van Loan, 5.2.8): a column that depends on the others is left out.</summary>
    private static List<double[]> Orthonormal(IEnumerable<double[]> columns)
    {
        var basis = new List<double[]>();
        foreach (var column in columns)
        {
            var before = Dot(column, column);
            for (var pass = 0; pass < 2; pass++)
            {
                foreach (var q in basis)
                {
                    AddMultiple(column, q, -Dot(q, column));
                }
            }

            var left = Dot(column, column);
            if (left > LeastShareBesideOthers * before)
            {
                var scale = 1 / Math.Sqrt(left);
                basis.Add([.. column.Select(v => v * scale)]);
            }
        }

        return basis;
    }

    // Of values that hang on next to nothing the covariance is huge, and rounding alone can leave it short of being positive. A ridge just large enough
    // to mend that makes every value a little less certain and invents nothing.
    private static Cholesky Whitening(double[,] covariance, List<double[]> columns)
    {
        var largest = Enumerable.Range(0, covariance.GetLength(0)).Max(i => covariance[i, i]);
        for (var ridge = RidgeMetres2; ridge <= Math.Max(largest * LargestRidgeShare, RidgeMetres2); ridge *= RidgeStep)
        {
            if (Cholesky.Of(WithNuisance(covariance, columns, ridge), 0) is { } whitening)
            {
                return whitening;
            }
        }

        throw new ArgumentException("The covariance is not positive semidefinite.", nameof(covariance));
    }

    private static double[,] WithNuisance(double[,] covariance, List<double[]> columns, double ridgeMetres2)
    {
        var n = covariance.GetLength(0);
        var sum = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                sum[i, j] = covariance[i, j] + (i == j ? ridgeMetres2 : 0);
                foreach (var column in columns)
                {
                    sum[i, j] += NuisanceVarianceMetres2 * column[i] * column[j];
                }
            }
        }

        return sum;
    }

    private static double[]? Scaled(double[] column)
    {
        var most = column.Max(Math.Abs);
        return most > 0 ? [.. column.Select(v => v / most)] : null;
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    private static void AddMultiple(double[] to, double[] of, double factor)
    {
        for (var i = 0; i < to.Length; i++)
        {
            to[i] += factor * of[i];
        }
    }
}
