namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Gets a fit out of a false rest: a point caught on the wrong side of its neighbours is put where most of its lengths want it.</summary>
internal sealed class Repair(NetworkSolver solver, StartFinder finder)
{
    private const int EnoughMoves = 8;

    // A point is suspected of standing wrong when the worst of its lengths misses by this many sigmas.
    private const double Suspicious = 8;

    /// <summary>The rest reached after moving points, if it is better; the one given otherwise.</summary>
    public Rest Improve(Rest rest)
    {
        for (var moves = 0; moves < EnoughMoves; moves++)
        {
            if (BestMove(rest) is not { } moved)
            {
                return rest;
            }

            var next = solver.Iterate(moved);
            if (!(next.RobustCost < rest.RobustCost * 0.99))
            {
                return rest;
            }

            rest = next;
        }

        return rest;
    }

    private double[]? BestMove(Rest rest)
    {
        var graph = finder.Graph;
        var places = finder.Places(rest.X);
        var (bestGain, best, bestPlace) = (0.0, -1, Array.Empty<double>());
        for (var i = 0; i < places.Length; i++)
        {
            if (places[i] is not { } now || graph.Known[i] is not null || Worst(graph, places, i, now) < Suspicious)
            {
                continue;
            }

            var there = ArcStart.Replace(graph, places, i);
            var gain = there is null ? 0 : Cost(graph, places, i, now) - Cost(graph, places, i, there);
            (bestGain, best, bestPlace) = gain > bestGain ? (gain, i, there!) : (bestGain, best, bestPlace);
        }

        if (best < 0)
        {
            return null;
        }

        places[best] = bestPlace;
        var x = (double[])rest.X.Clone();
        for (var a = 0; a < graph.Dimension; a++)
        {
            var u = solver.Network.Points[best].Unknown[a];
            if (u >= 0)
            {
                x[u] = bestPlace[a];
            }
        }

        return x;
    }

    private static double Worst(LengthGraph graph, double[]?[] places, int point, double[] at) =>
        graph.Edges[point].Select(e => Math.Abs(Misfit(e, places, at))).DefaultIfEmpty().Max();

    private static double Cost(LengthGraph graph, double[]?[] places, int point, double[] at) =>
        graph.Edges[point].Sum(e => Rest.Robust(Misfit(e, places, at)));

    private static double Misfit(LengthGraph.Edge edge, double[]?[] places, double[] at) =>
        places[edge.Other] is { } other ? (Math.Sqrt(at.Zip(other, (u, v) => (u - v) * (u - v)).Sum()) - edge.Length) / edge.Sigma : 0;
}
