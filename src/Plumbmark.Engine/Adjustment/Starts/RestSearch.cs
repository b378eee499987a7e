using Plumbmark.Engine.LeastSquares;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Tries starts until one leads to a fit that the readings can believe, else keeps the best.</summary>
internal static class RestSearch
{
    // A fit no worse than this chance allows is not looked at twice.
    private const double Believable = 1e-4;

    // Above this many unknowns a second start costs more than it is likely to bring.
    private const int LargeNetwork = 1500;

    /// <summary>The best rest found, placed on the datum.</summary>
    /// <param name="solver">The network.</param>
    /// <param name="near">A fit to start from; null when there is none.</param>
    public static Rest Of(NetworkSolver solver, NetworkFit? near)
    {
        var finder = new StartFinder(solver.Network);
        var repair = new Repair(solver, finder);
        Rest? best = null;
        foreach (var start in Near(finder, near).Concat(finder.All()).Where(s => Dense.IsFinite(s)))
        {
            var rest = solver.Iterate(start);
            if (!IsBelievable(solver, rest) && rest.Summary.IsSolutionUsable)
            {
                rest = repair.Improve(rest);
            }

            best = best is null || IsBetter(rest, best) ? rest : best;
            if (IsBelievable(solver, best) || (best.Summary.IsSolutionUsable && solver.Network.UnknownCount > LargeNetwork))
            {
                break;
            }
        }

        return best!;
    }

    private static IEnumerable<double[]> Near(StartFinder finder, NetworkFit? near) => near is null ? [] : [finder.Near(near)];

    private static bool IsBetter(Rest a, Rest b) =>
        a.Summary.IsSolutionUsable && (!b.Summary.IsSolutionUsable || a.RobustCost < b.RobustCost * 0.99);

    private static bool IsBelievable(NetworkSolver solver, Rest rest)
    {
        var freedom = Math.Max(1, solver.Network.RowCount - solver.Network.UnknownCount + solver.Motions.Count);
        return rest.Summary.IsSolutionUsable && ChiSquare.UpperTail(rest.Summary.SumOfSquares, freedom) > Believable;
    }
}
