using Plumbmark.Engine.Hypotheses;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>Which form of damage explains a frame best: every form at every place, and every two together, against nothing.</summary>
/// <remarks>
/// <para>
/// Each is fitted by generalised least squares on all contrasts with their full covariance, whatever the frame's lie. The belief in one is
/// exp(-(χ² + k ln n) / 2) divided by the root of the number of places its form was tried at (Schwarz, Annals of Statistics 6, 1978, 461-464; the
/// division, by its root, is the extended criterion of Chen and Chen, Biometrika 95, 2008, 759-771, with γ = 1/2). Without it a form
/// that can begin anywhere would win by the number of its tickets.
/// </para>
/// <para>k - amounts fitted; n - contrasts. The amount is the mean over the places and shapes of the same explanation, weighted by belief.</para>
/// </remarks>
internal sealed class FormComparison
{
    // How far the points of a sound frame stray from its drawing, beside the measuring: 1/64 in, common practice, no source. Without it
    // every frame measured well enough would be damaged.
    private const double ScatterMetres = 0.4e-3;

    // An amount that may well be nothing explains nothing; beside a real one it would only share its belief.
    private const double LeastSizeInU = 2;

    private const int FirstOfTwo = 24; // single explanations that are tried together with all others
    private const double WorthKeeping = 1e-4; // of the best belief

    private readonly MeasuredFrame _frame;
    private readonly IReadOnlyList<DamageShape> _shapes;
    private readonly HashSet<int> _inBook;
    private readonly GaussianComparison _comparison;
    private readonly EffectSet _effects;
    private readonly int[] _firstEffect;
    private readonly double _logCount;
    private readonly Dictionary<(DamageForm Form, bool IsOfWholeFrame), double> _logPlaces;
    private double _bestSoFar = double.NegativeInfinity;

    private FormComparison(MeasuredFrame frame, Contrasts contrasts)
    {
        _frame = frame;
        _shapes = [.. DamageShapes.Of(frame).Where(s => !s.IsOneStation)];
        _inBook = [.. contrasts.All.Where(c => c.IsBook).Select(c => c.Subject)];
        var covariance = contrasts.Covariance();
        for (var i = 0; i < contrasts.All.Count; i++)
        {
            covariance[i, i] += ScatterMetres * ScatterMetres;
        }

        _comparison = new GaussianComparison(contrasts.Values(), covariance, contrasts.Lies());
        var columns = _shapes.SelectMany(s => s.Moves).Select(contrasts.ChangesBy).ToList();
        _effects = _comparison.Effects(columns);
        _firstEffect = new int[_shapes.Count];
        for (var s = 1; s < _shapes.Count; s++)
        {
            _firstEffect[s] = _firstEffect[s - 1] + _shapes[s - 1].Moves.Length;
        }

        _logCount = Math.Log(Math.Max(2, contrasts.All.Count));
        _logPlaces = _shapes
            .Where((_, s) => EffectsOf(s).All(e => _effects.IsSeen(e)))
            .GroupBy(s => (s.Form, s.From is null))
            .ToDictionary(g => g.Key, g => Math.Log(g.Count()) / 2);
    }

    /// <summary>All explanations worth keeping: first the one to tell (<see cref="SimplestExplanation"/>), then the most believed; nothing at all is one of them. Empty when there is nothing to compare.</summary>
    public static IReadOnlyList<DamageExplanation> Of(MeasuredFrame frame, Contrasts contrasts) =>
        contrasts.All.Count == 0 ? [] : new FormComparison(frame, contrasts).Explanations();

    private IReadOnlyList<DamageExplanation> Explanations()
    {
        var tried = new List<Trial> { new([], [], [], 0) };
        var singles = Enumerable.Range(0, _shapes.Count).Select(s => Try(s)).OfType<Trial>().OrderByDescending(t => t.LogBelief).ToList();
        tried.AddRange(singles);
        _bestSoFar = tried.Max(t => t.LogBelief);
        foreach (var first in singles.Take(FirstOfTwo))
        {
            foreach (var second in singles)
            {
                if (MayMeet(_shapes[first.Shapes[0]], _shapes[second.Shapes[0]]) && Try(first.Shapes[0], second.Shapes[0]) is { } both)
                {
                    tried.Add(both);
                }
            }
        }

        var best = tried.Max(t => t.LogBelief);
        var beliefs = tried
            .DistinctBy(t => t.Shapes.Length == 2 ? (t.Shapes.Min(), t.Shapes.Max()) : (t.Shapes.FirstOrDefault(-1), -1))
            .Select(t => (Trial: t, Belief: Math.Exp(t.LogBelief - best)))
            .Where(t => t.Belief > WorthKeeping)
            .ToList();
        var total = beliefs.Sum(t => t.Belief);
        var groups = beliefs
            .GroupBy(t => string.Join('+', t.Trial.Shapes.Select(KeyOf).Order(StringComparer.Ordinal)), StringComparer.Ordinal)
            .Select(g => Mean([.. g], total))
            .OrderByDescending(e => e.Probability)
            .ToList();
        return SimplestExplanation.First(PairsNotToldApart.Merge(_frame, groups));
    }

    /// <summary>Two forms, or two points; but left against right sees of a pair only what its points differ by, and two of them bent are one then.</summary>
    private bool MayMeet(DamageShape a, DamageShape b) =>
        a.Form != b.Form
        || (a.Form == DamageForm.Point && a.Subject != b.Subject && (!ArePair(a.Subject, b.Subject) || _inBook.Contains(a.Subject)));

    private bool IsLeft(int point) =>
        _frame.Pairs.Any(p => p.Left == point)
        || (!_frame.Pairs.Any(p => p.Right == point) && _frame.HasPlan(point) && _frame.Y(point) > 0);

    private bool ArePair(int a, int b) => _frame.Pairs.Any(p => (p.Left == a && p.Right == b) || (p.Left == b && p.Right == a));

    private string KeyOf(int shape) =>
        _shapes[shape].Form == DamageForm.Point ? $"{DamageForm.Point}:{_shapes[shape].Subject}" : $"{_shapes[shape].Form}";

    private IEnumerable<int> EffectsOf(int shape) => Enumerable.Range(_firstEffect[shape], _shapes[shape].Moves.Length);

    private Trial? Try(params int[] shapes)
    {
        int[] effects = [.. shapes.SelectMany(EffectsOf)];
        double LogBelief(double drop) =>
            (drop / 2)
            - (effects.Length * _logCount / 2)
            - shapes.Sum(s => _logPlaces.GetValueOrDefault((_shapes[s].Form, _shapes[s].From is null)));

        // Most combinations are hopeless: they are left before their uncertainty is worked out.
        if (
            _effects.Explained(effects) is not { } drop
            || LogBelief(drop) < _bestSoFar + Math.Log(WorthKeeping)
            || _effects.Fit(effects) is not { } fit
        )
        {
            return null;
        }

        var at = 0;
        var trial = new Trial(shapes, fit.Amounts, Rows(fit.Covariance), LogBelief(drop));
        foreach (var shape in shapes)
        {
            var count = _shapes[shape].Moves.Length;
            var (amount, u) = count > 1 ? LengthOf(trial, at, count) : (fit.Amounts[at], Math.Sqrt(fit.Covariance[at, at]));
            if ((_shapes[shape].OnlyPositive && amount <= 0) || Math.Abs(amount) < LeastSizeInU * u)
            {
                return null;
            }

            at += count;
        }

        _bestSoFar = shapes.Length > 1 ? Math.Max(_bestSoFar, trial.LogBelief) : _bestSoFar;
        return trial;
    }

    private static double[][] Rows(double[,] matrix) =>
        [
            .. Enumerable
                .Range(0, matrix.GetLength(0))
                .Select(i => Enumerable.Range(0, matrix.GetLength(1)).Select(j => matrix[i, j]).ToArray()),
        ];

    /// <summary>One explanation from the places and shapes it was tried with: mean amounts, and how much they differ added to the uncertainty.</summary>
    private DamageExplanation Mean(IReadOnlyList<(Trial Trial, double Belief)> trials, double total)
    {
        var sum = trials.Sum(t => t.Belief);
        var most = trials.MaxBy(t => t.Belief).Trial;
        var parts = new List<DamagePart>();
        foreach (var key in most.Shapes.Select(KeyOf))
        {
            var sizes = trials.Select(t => (Size: SizeOf(t.Trial, key), t.Belief)).ToList();
            var mean = sizes.Sum(s => s.Size.Amount * s.Belief) / sum;
            var variance = sizes.Sum(s => s.Belief * ((s.Size.U * s.Size.U) + ((s.Size.Amount - mean) * (s.Size.Amount - mean)))) / sum;
            var shape = _shapes[most.Shapes.First(s => KeyOf(s) == key)];
            parts.Add(
                new DamagePart(shape, shape.From, false, mean, Math.Sqrt(variance))
                {
                    MovedMetres = shape.Form == DamageForm.Point ? MeanMove(trials, key, sum) : [],
                    IsLeft = shape.Form == DamageForm.Point && IsLeft(shape.Subject),
                }
            );
        }

        return new DamageExplanation([.. parts.OrderByDescending(p => Math.Abs(p.AmountMetres) / p.UMetres)], sum / total);
    }

    /// <summary>The mean displacement of a point, axis by axis; an axis that a trial leaves alone counts as not moved in it.</summary>
    private double[] MeanMove(IReadOnlyList<(Trial Trial, double Belief)> trials, string key, double sum)
    {
        var move = new double[3];
        foreach (var (trial, belief) in trials)
        {
            var at = 0;
            foreach (var shape in trial.Shapes)
            {
                foreach (var column in _shapes[shape].Moves)
                {
                    if (KeyOf(shape) == key)
                    {
                        move[_frame.Coordinates[Array.IndexOf(column, 1)].Axis] += belief / sum * trial.Amounts[at];
                    }

                    at++;
                }
            }
        }

        return move;
    }

    /// <summary>Amount and standard uncertainty of one part; of a bent point the length of its displacement.</summary>
    private (double Amount, double U) SizeOf(Trial trial, string key)
    {
        var at = 0;
        foreach (var shape in trial.Shapes)
        {
            var count = _shapes[shape].Moves.Length;
            if (KeyOf(shape) == key)
            {
                return _shapes[shape].Form == DamageForm.Point
                    ? LengthOf(trial, at, count)
                    : (trial.Amounts[at], Math.Sqrt(trial.Covariance[at][at]));
            }

            at += count;
        }

        throw new System.Diagnostics.UnreachableException();
    }

    private static (double Amount, double U) LengthOf(Trial trial, int at, int count)
    {
        var squares = 0.0;
        var variance = 0.0;
        for (var i = at; i < at + count; i++)
        {
            squares += trial.Amounts[i] * trial.Amounts[i];
            for (var j = at; j < at + count; j++)
            {
                variance += trial.Amounts[i] * trial.Amounts[j] * trial.Covariance[i][j];
            }
        }

        var length = Math.Sqrt(squares);
        return length > 0 ? (length, Math.Sqrt(variance) / length) : (0, Math.Sqrt(trial.Covariance[at][at]));
    }

    /// <summary>One combination tried: its shapes, their fitted amounts and the logarithm of the belief in it.</summary>
    private sealed record Trial(int[] Shapes, double[] Amounts, double[][] Covariance, double LogBelief);
}
