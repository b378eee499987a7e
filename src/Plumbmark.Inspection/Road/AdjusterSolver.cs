using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// Finds the settings of one side's adjusters that bring camber, castor and this wheel's toe nearest to the book's: each miss counts against its own limit, every adjuster stays in its range, shims are
/// whole, and of settings equally good the smaller one is taken.
/// </summary>
internal sealed class AdjusterSolver
{
    // Common practice, no source: what counts as one step of miss where the book gives no limit.
    private const double UsualTolerance = 0.5 * Math.PI / 180;
    private const double UsualToeTolerance = 0.1 * Math.PI / 180;

    // Moving an adjuster through its whole range weighs as much as a hundredth of a limit: it only decides between settings equally good.
    private const double LazinessWeight = 0.01;
    private const double StillMetres = 1e-8;
    private const int MostSteps = 12;

    private readonly RoadModel _model;
    private readonly Side _side;
    private readonly double[] _withoutAdjusters;
    private readonly List<Adjuster> _adjusters;
    private readonly List<Target> _targets;

    public AdjusterSolver(RoadModel model, Side side)
    {
        (_model, _side) = (model, side);
        _adjusters = [.. model.Section.Adjusters.Where(a => a.Side == side).Take(BoundedLeastSquares.MostUnknowns)];
        _withoutAdjusters = [.. model.Deviations.Amounts];
        foreach (var adjuster in _adjusters)
        {
            AdjusterEffect.Add(adjuster, -FittedMetres(adjuster), _withoutAdjusters);
        }

        _targets = [.. TargetsOf(model.Section.Book, side)];
    }

    /// <summary>One angle aimed at.</summary>
    /// <param name="Kind">Which.</param>
    /// <param name="Basic">Its index among the basic numbers.</param>
    /// <param name="Aim">What to aim at, radians.</param>
    /// <param name="Least">Least allowed.</param>
    /// <param name="Most">Most allowed.</param>
    public sealed record Target(FigureKind Kind, int Basic, double Aim, double? Least, double? Most)
    {
        public double Weight =>
            1
            / (
                Least is { } l && Most is { } m && m > l ? 0.5 * (m - l)
                : Kind == FigureKind.ToeIn ? UsualToeTolerance
                : UsualTolerance
            );
    }

    public IReadOnlyList<Adjuster> Adjusters => _adjusters;

    public IReadOnlyList<Target> Targets => _targets;

    /// <summary>Whether there is anything to set and anything to aim at.</summary>
    public bool HasWork => _adjusters.Count > 0 && _targets.Count > 0 && _model.Kinematics.Front is not null;

    public static double FittedMetres(Adjuster adjuster) => adjuster.Fitted?.Metres ?? 0;

    /// <summary>The best settings, metres; null when the linkage does not go together on the way.</summary>
    public double[]? Solve()
    {
        var open = new double?[_adjusters.Count];
        if (Settle(open) is not { } ideal)
        {
            return null;
        }

        // Whole shims: of the two nearest counts of each, the pair of counts that leaves least, the rest set anew around them.
        var stepped = Enumerable.Range(0, ideal.Length).Where(j => _adjusters[j].Step is not null).ToArray();
        double[]? best = null;
        var leastMiss = double.PositiveInfinity;
        for (var choice = 0; choice < 1 << stepped.Length; choice++)
        {
            var pinned = new double?[_adjusters.Count];
            for (var k = 0; k < stepped.Length; k++)
            {
                pinned[stepped[k]] = Whole(_adjusters[stepped[k]], ideal[stepped[k]], (choice >> k) % 2 == 1);
            }

            if (Settle(pinned) is { } tried && Miss(tried) is var miss && miss < leastMiss)
            {
                (best, leastMiss) = (tried, miss);
            }
        }

        return best;
    }

    /// <summary>The angles aimed at, with the adjusters set so.</summary>
    public double[] AnglesAt(ReadOnlySpan<double> settings)
    {
        var basics = _model.Kinematics.Basics(ThetaAt(settings), withTurns: false);
        return [.. _targets.Select(t => basics[t.Basic])];
    }

    private static double Whole(Adjuster adjuster, double ideal, bool up)
    {
        var step = adjuster.Step!.Value.Metres;
        var count = Math.Floor((ideal - adjuster.Least.Metres) / step) + (up ? 1 : 0);
        return Math.Clamp(adjuster.Least.Metres + (count * step), adjuster.Least.Metres, LastWhole(adjuster, step));
    }

    private static double LastWhole(Adjuster adjuster, double step) =>
        adjuster.Least.Metres + (step * Math.Floor(((adjuster.Most.Metres - adjuster.Least.Metres) / step) + 1e-9));

    // Gauss-Newton on the settings that are open; those that are pinned stay.
    private double[]? Settle(double?[] pinned)
    {
        var x = _adjusters.Select((a, j) => pinned[j] ?? Math.Clamp(FittedMetres(a), a.Least.Metres, a.Most.Metres)).ToArray();
        for (var step = 0; step < MostSteps; step++)
        {
            var angles = AnglesAt(x);
            if (angles.Any(double.IsNaN))
            {
                return null;
            }

            var next = Next(x, angles, pinned);
            var moved = x.Zip(next, (a, b) => Math.Abs(a - b)).DefaultIfEmpty(0).Max();
            x = next;
            if (moved < StillMetres)
            {
                break;
            }
        }

        return x;
    }

    private double[] Next(double[] x, double[] angles, double?[] pinned)
    {
        var (n, m) = (_adjusters.Count, _targets.Count);
        var slopes = _model.Kinematics.Slopes(ThetaAt(x), withTurns: false);
        var (a, b) = (new double[(m + n) * n], new double[m + n]);
        var (lower, upper) = (new double[n], new double[n]);
        for (var j = 0; j < n; j++)
        {
            var unit = new double[RoadParameters.Count];
            AdjusterEffect.Add(_adjusters[j], 1, unit);
            for (var i = 0; i < m; i++)
            {
                a[(i * n) + j] = _targets[i].Weight * Dot(slopes[_targets[i].Basic], unit);
            }

            // From the drawn state, not from where it is now: less is better.
            var range = Math.Max(_adjusters[j].Most.Metres - _adjusters[j].Least.Metres, StillMetres);
            a[((m + j) * n) + j] = LazinessWeight / range;
            b[m + j] = -LazinessWeight / range * x[j];
            lower[j] = (pinned[j] ?? _adjusters[j].Least.Metres) - x[j];
            upper[j] = (pinned[j] ?? _adjusters[j].Most.Metres) - x[j];
        }

        for (var i = 0; i < m; i++)
        {
            b[i] = _targets[i].Weight * (_targets[i].Aim - angles[i]);
        }

        var move = BoundedLeastSquares.Solve(a, m + n, n, b, lower, upper);
        return [.. x.Select((value, j) => value + move[j])];
    }

    private double Miss(double[] x)
    {
        var angles = AnglesAt(x);
        var sum = _targets.Select((t, i) => t.Weight * (angles[i] - t.Aim)).Sum(r => r * r);
        return sum
            + _adjusters.Select((a, j) => LazinessWeight * x[j] / Math.Max(a.Most.Metres - a.Least.Metres, StillMetres)).Sum(r => r * r);
    }

    private double[] ThetaAt(ReadOnlySpan<double> settings)
    {
        double[] theta = [.. _withoutAdjusters];
        for (var j = 0; j < settings.Length; j++)
        {
            AdjusterEffect.Add(_adjusters[j], settings[j], theta);
        }

        return theta;
    }

    // Toe is asked of both wheels together; each is given half, so that the steering wheel stays straight.
    private static IEnumerable<Target> TargetsOf(IEnumerable<AskedFigure> book, Side side)
    {
        foreach (
            var (kind, basic, share) in new[]
            {
                (FigureKind.Camber, Basic.Camber, 1.0),
                (FigureKind.Castor, Basic.Castor, 1.0),
                (FigureKind.ToeIn, Basic.ToeIn, 0.5),
            }
        )
        {
            if (book.FirstOrDefault(b => b.Kind == kind) is { AimSi: { } aim } figure)
            {
                yield return new(kind, RoadKinematics.Index(side, basic), share * aim, share * figure.LeastSi, share * figure.MostSi);
            }
        }
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
}
