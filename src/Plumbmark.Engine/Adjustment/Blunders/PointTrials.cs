namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Hypotheses that a point is wrong as a whole: two free numbers for all its readings.</summary>
/// <remarks>
/// A bad drop shows only where readings of the mark meet readings of the point; a mark that moved, where readings before and after disagree; a fixed place, where
/// others are fixed too. A point that was dropped badly once, with all lengths taken from that mark, contradicts nothing.
/// </remarks>
internal sealed class PointTrials(NetworkFit fit)
{
    private const int MostPoints = 5;
    private const int MostMoves = 4;
    private readonly Network _network = fit.State.Network.Source;

    /// <summary>All hypotheses about points that the readings can judge.</summary>
    public IEnumerable<Hypothesis> All() => [.. BadDrops(), .. WrongPlaces(), .. MovedMarks()];

    private IEnumerable<Hypothesis> BadDrops()
    {
        var points = fit.State.Network.Points;
        var candidates = Enumerable
            .Range(0, points.Length)
            .Where(i => points[i].DropError >= 0)
            .OrderByDescending(i => DropMisfit(points[i]))
            .Take(MostPoints);
        foreach (var i in candidates)
        {
            // With a metre of drop error the prior says nothing any more.
            var source = _network.Points[i] with
            {
                DropSigmaMetres = 1,
            };
            if (NetworkAdjustment.SolveNear(Replace(i, source), fit) is NetworkOutcome.Adjusted { Fit: var freed })
            {
                var slot = freed.State.Network.Points[i];
                var (u, prior) = (slot.DropError, points[i].Drop);
                var d = (freed.State.Unknowns[u] - prior.MeanErrorX, freed.State.Unknowns[u + 1] - prior.MeanErrorY);
                var own = prior.Variance;
                var q = freed.State.Cofactor;
                yield return Of(source.Id, freed, (q.Of(u, u) + own, q.Of(u, u + 1), q.Of(u + 1, u + 1) + own), d, BlunderPriors.Point);
            }
        }
    }

    private double DropMisfit(PointSlot point)
    {
        var (x, drop) = (fit.State.Unknowns, point.Drop);
        return (Math.Pow(x[point.DropError] - drop.MeanErrorX, 2) + Math.Pow(x[point.DropError + 1] - drop.MeanErrorY, 2)) / drop.Variance;
    }

    private IEnumerable<Hypothesis> WrongPlaces()
    {
        var held = Enumerable
            .Range(0, _network.Points.Count)
            .Where(i => _network.Points[i] is { X: Coordinate.Fixed, Y: Coordinate.Fixed } && fit.State.Network.Points[i].IsTouched[0])
            .ToList();

        // Two fixed places are a datum; from the third on they check each other.
        foreach (var i in held.Count > 2 ? held.Take(4 * MostPoints) : [])
        {
            var (x, y) = (((Coordinate.Fixed)_network.Points[i].X).Metres, ((Coordinate.Fixed)_network.Points[i].Y).Metres);
            var source = _network.Points[i] with { X = Coordinate.Unknown, Y = Coordinate.Unknown, SketchXMetres = x, SketchYMetres = y };
            if (NetworkAdjustment.SolveNear(Replace(i, source), fit) is NetworkOutcome.Adjusted { Fit: var freed })
            {
                var (u, v) = (freed.Covariance.IndexOf(source.Id, Axis.X)!.Value, freed.Covariance.IndexOf(source.Id, Axis.Y)!.Value);
                var c = freed.Covariance;
                yield return Of(
                    source.Id,
                    freed,
                    (c[u, u], c[u, v], c[v, v]),
                    (c.ValuesMetres[u] - x, c.ValuesMetres[v] - y),
                    BlunderPriors.Point
                );
            }
        }
    }

    private IEnumerable<Hypothesis> MovedMarks()
    {
        foreach (var move in MarkMoves.Of(fit).OrderByDescending(m => m.Gain).Take(MostMoves))
        {
            var split = MarkMoves.Split(fit, move);
            if (NetworkAdjustment.SolveNear(split, fit) is not NetworkOutcome.Adjusted { Fit: var freed })
            {
                continue;
            }

            // How far the mark stands from where it stood before, and how sure that is.
            var c = freed.Covariance;
            int[] at =
            [
                .. ((string[])[move.Point, MarkMoves.Later]).SelectMany(p =>
                    ((Axis[])[Axis.X, Axis.Y]).Select(a => c.IndexOf(p, a)!.Value)
                ),
            ];
            double Covariance(int a, int b) => c[at[a], at[b]] - c[at[a], at[b + 2]] - c[at[a + 2], at[b]] + c[at[a + 2], at[b + 2]];
            var d = (c.ValuesMetres[at[2]] - c.ValuesMetres[at[0]], c.ValuesMetres[at[3]] - c.ValuesMetres[at[1]]);
            yield return Of(
                move.Point,
                freed,
                (Covariance(0, 0), Covariance(0, 1), Covariance(1, 1)),
                d,
                BlunderPriors.MovedMark / move.Splits
            );
        }
    }

    private Network Replace(int index, NetworkPoint point) =>
        new(_network.Points.Select((p, i) => i == index ? point : p), _network.Observations, _network.Tools, _network.MirrorPairs);

    private Hypothesis Of(string point, NetworkFit freed, (double XX, double XY, double YY) s, (double X, double Y) d, double prior)
    {
        var weighed = new Evidence(fit.WeightedSquares, fit.Redundancy);
        var sizes = BlunderPriors.PointSizesMetres;
        var evidence = Evidence.Mean([.. sizes.Select(t => weighed.Of(freed.WeightedSquares, s, d, s, (t * t, t * t)))]);
        var probability = freed.Redundancy > 0 ? freed.ChiSquareProbability : null;
        return new Hypothesis(
            [new Doubted(null, point, BlunderKind.PointOff, double.Hypot(d.X, d.Y), null)],
            Math.Log(prior) + evidence,
            probability
        );
    }
}
