using Plumbmark.Engine.Hypotheses;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Comparing;

/// <summary>
/// How the frame lies: where its centre line runs and how it leans, from the pairs and book figures that agree with each other. A bent
/// horn or a misprint has no say.
/// </summary>
/// <remarks>
/// In plan the centre line is the straight line through the middles of the pairs that agree, or the book's where points have book figures;
/// stagger has no say in it. In height the roll is what the pairs that agree lean in common: it is how the frame stands, not how it is.
/// A value held against the lie never takes part in fixing it, so that it is not flattered.
/// </remarks>
internal sealed class FrameLie
{
    // How far the pairs of a sound frame stray from one line, beside the measuring: 1/64 in. Common practice, no source; it only decides who has a say.
    private const double ScatterMetres = 0.4e-3;

    private const double LeastShareOfDamage = 0.01; // of a unit of damage: less is not seen in a value

    private readonly MeasuredFrame _frame;
    private readonly Contrasts _contrasts;
    private readonly Part _plan;
    private readonly Part _height;

    private FrameLie(MeasuredFrame frame, Contrasts contrasts, IReadOnlyList<double[]> damage)
    {
        (_frame, _contrasts) = (frame, contrasts);
        var (values, covariance) = (contrasts.Values(), contrasts.Covariance());
        _plan = Part.Of(contrasts.All, values, covariance, damage, isHeight: false);
        _height = Part.Of(contrasts.All, values, covariance, damage, isHeight: true);
    }

    /// <summary>Finds how a frame lies that lies along x within a few degrees.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="contrasts">Its contrasts.</param>
    /// <param name="damage">
    /// Displacements by damage that is believed to be there, of unknown size: what most of a frame agrees on is no guide where one form of
    /// damage moves most of it.
    /// </param>
    public static FrameLie Of(MeasuredFrame frame, Contrasts contrasts, IReadOnlyList<double[]>? damage = null) =>
        new(frame, contrasts, damage ?? []);

    /// <summary>Whether the readings fix the centre line.</summary>
    public bool HasCentreLine => _plan.Fit.Estimator is not null;

    /// <summary>Whether the readings fix the lean.</summary>
    public bool HasLean => _height.Fit.Estimator is not null;

    /// <summary>Forward, left, turn in plan, up, nose up, left side up; zero where nothing tells.</summary>
    public double[] Sizes()
    {
        var sizes = new double[Contrast.LieCount];
        _plan.AddSizes(sizes);
        _height.AddSizes(sizes);
        return sizes;
    }

    /// <summary>How far the left side is up, as a slope, with its standard uncertainty; null when nothing tells.</summary>
    public (double Slope, double U)? Roll()
    {
        const int RollParameter = 5;
        var at = Array.IndexOf(_height.Parameters, RollParameter);
        if (_height.Fit.Estimator is not { } estimator || at < 0)
        {
            return null;
        }

        var weights = new double[_frame.Values.Length];
        for (var r = 0; r < _height.Rows.Length; r++)
        {
            foreach (var term in _contrasts.All[_height.Rows[r]].Terms)
            {
                weights[term.Coordinate] += estimator[at, r] * term.Factor;
            }
        }

        return (Sizes()[RollParameter], Math.Sqrt(Math.Max(0, Quadratic(weights))));
    }

    /// <summary>How much say a pair has in the centre line (0 to 1); null when it takes no part.</summary>
    public double? SayOfPair(int pair) => _plan.Say((false, pair));

    /// <summary>How much say a point's book figure has in the lie in plan (0 to 1); null when it takes no part.</summary>
    public double? SayOfBook(int point) => _plan.Say((true, point));

    /// <summary>A contrast held against the lie of all others; null when the others do not fix it.</summary>
    public AdjustedContrast? Adjust(Contrast contrast)
    {
        var part = contrast.IsHeight ? _height : _plan;
        var estimator = part.EstimatorWithout(OwnGroups(contrast));

        // Stagger has no say in the centre line, so that a pair may be held against a line through its own middle when there is no other.
        estimator ??= contrast.Kind == ContrastKind.Stagger ? part.Fit.Estimator : null;
        return estimator is null ? null : Adjusted(contrast, part, estimator);
    }

    /// <summary>A contrast that the frame's lie does not touch.</summary>
    public AdjustedContrast AsItIs(Contrast contrast) => Adjusted(contrast, _plan, null);

    private AdjustedContrast Adjusted(Contrast contrast, Part part, double[,]? estimator)
    {
        var weights = new double[_frame.Values.Length];
        foreach (var term in contrast.Terms)
        {
            weights[term.Coordinate] += term.Factor;
        }

        var expected = contrast.Expected;
        for (var r = 0; estimator is not null && r < part.Rows.Length; r++)
        {
            var row = _contrasts.All[part.Rows[r]];
            var share = 0.0;
            for (var p = 0; p < part.Parameters.Length; p++)
            {
                share += contrast.Lie[part.Parameters[p]] * estimator[p, r];
            }

            expected -= share * row.Expected;
            foreach (var term in row.Terms)
            {
                weights[term.Coordinate] -= share * term.Factor;
            }
        }

        var value = -expected;
        for (var i = 0; i < weights.Length; i++)
        {
            value += weights[i] * _frame.Values[i];
        }

        return new AdjustedContrast(contrast, value, Math.Sqrt(Math.Max(0, Quadratic(weights))), weights);
    }

    private (bool IsBook, int Subject)[] OwnGroups(Contrast contrast)
    {
        if (contrast.Subject == Contrast.NoSubject)
        {
            return [];
        }

        if (!contrast.IsBook)
        {
            var (_, left, right) = _frame.Pairs[contrast.Subject];
            return [(false, contrast.Subject), (true, left), (true, right)];
        }

        var pair = _frame.Pairs.ToList().FindIndex(p => p.Left == contrast.Subject || p.Right == contrast.Subject);
        return [(true, contrast.Subject), (false, pair)];
    }

    private double Quadratic(double[] weights)
    {
        var sum = 0.0;
        for (var i = 0; i < weights.Length; i++)
        {
            for (var j = 0; weights[i] != 0 && j < weights.Length; j++)
            {
                sum += weights[i] * weights[j] * _frame.Covariance[i, j];
            }
        }

        return sum;
    }

    /// <summary>The lie in plan or in height: its own contrasts, its own parameters.</summary>
    private sealed record Part(int[] Rows, int[] Parameters, List<(bool IsBook, int Subject)> Groups, RobustLinearFit Fit, double[] Values)
    {
        public static Part Of(
            IReadOnlyList<Contrast> all,
            double[] values,
            double[,] covariance,
            IReadOnlyList<double[]> damage,
            bool isHeight
        )
        {
            var rows = Enumerable.Range(0, all.Count).Where(r => all[r].IsHeight == isHeight && all[r].TellsLie).ToArray();
            var part = Of(all, values, covariance, damage, rows, isHeight);
            if (part.Fit.Estimator is not null)
            {
                return part;
            }

            // One or two book heights do not say how the frame is nosed; the pairs alone still say how it is rolled.
            return Of(all, values, covariance, damage, [.. rows.Where(r => !all[r].IsBook)], isHeight);
        }

        private static Part Of(
            IReadOnlyList<Contrast> all,
            double[] values,
            double[,] covariance,
            IReadOnlyList<double[]> damage,
            int[] rows,
            bool isHeight
        )
        {
            var parameters = ParametersOf([.. rows.Select(r => all[r].Kind)], isHeight);
            var groups = rows.Select(r => (all[r].IsBook, all[r].Subject)).Distinct().ToList();
            var own = new double[rows.Length, rows.Length];
            for (var i = 0; i < rows.Length; i++)
            {
                for (var j = 0; j < rows.Length; j++)
                {
                    own[i, j] = covariance[rows[i], rows[j]];
                }
            }

            // Damage that moves one group alone is that group's own matter: with the group left out nothing would determine it.
            var seen = damage
                .Where(move =>
                    rows.Where(r => Math.Abs(all[r].ChangeBy(move)) > LeastShareOfDamage)
                        .Select(r => (all[r].IsBook, all[r].Subject))
                        .Distinct()
                        .Count() > 1
                )
                .ToList();
            var fit = new RobustLinearFit(
                [.. rows.Select(r => values[r])],
                own,
                [.. rows.Select(r => parameters.Select(p => all[r].Lie[p]).Concat(seen.Select(m => all[r].ChangeBy(m))).ToArray())],
                [.. rows.Select(r => groups.IndexOf((all[r].IsBook, all[r].Subject)))],
                ScatterMetres
            );
            fit.Solve();
            return new Part(rows, parameters, groups, fit, [.. rows.Select(r => values[r])]);
        }

        /// <summary>Which motions the contrasts tell: symmetry alone knows neither fore and aft, nor up, nor nose up.</summary>
        private static int[] ParametersOf(ContrastKind[] kinds, bool isHeight) =>
            isHeight ? (kinds.Contains(ContrastKind.BookZ) ? [3, 4, 5] : [5]) : (kinds.Contains(ContrastKind.BookX) ? [0, 1, 2] : [1, 2]);

        public double? Say((bool IsBook, int Subject) group) =>
            Fit.Estimator is not null && Groups.IndexOf(group) is >= 0 and var g ? Fit.Weights[g] : null;

        public double[,]? EstimatorWithout((bool IsBook, int Subject)[] own) =>
            Fit.Estimator is null ? null : Fit.EstimatorWithout([.. own.Select(g => Groups.IndexOf(g)).Where(g => g >= 0)]);

        public void AddSizes(double[] sizes)
        {
            if (Fit.Estimator is not { } estimator)
            {
                return;
            }

            for (var p = 0; p < Parameters.Length; p++)
            {
                for (var r = 0; r < Rows.Length; r++)
                {
                    sizes[Parameters[p]] += estimator[p, r] * Values[r];
                }
            }
        }
    }
}
