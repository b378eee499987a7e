using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Doubts;

/// <summary>What the readings make doubtful, and what they say without it. Nothing is dropped: the fit of all readings stays beside it.</summary>
/// <param name="Explanations">What is doubted; empty when nothing is. Several when it cannot be told which of them is wrong.</param>
/// <param name="IsLocated">Whether the first explanation is much likelier than any other.</param>
/// <param name="Believed">The fit without what is doubted; the fit of all readings when nothing is, or when it cannot be told what.</param>
/// <param name="Others">The fits that hold if the doubt is wrong, or if another candidate is the wrong one.</param>
internal sealed record FrameDoubts(
    IReadOnlyList<Explanation> Explanations,
    bool IsLocated,
    NetworkFit? Believed,
    IReadOnlyList<NetworkFit> Others
)
{
    /// <summary>The repeats that settle the doubt: of each doubted reading one that stands and agrees with what is believed. Empty while one is wanting.</summary>
    public IReadOnlyList<string> SettledBy { get; private init; } = [];

    /// <summary>Whether nothing needs measuring again: every doubted reading has a repeat that agrees with what is believed.</summary>
    public bool IsSettled => SettledBy.Count > 0;

    private const int MostCandidates = 4; // more than a person measures again before looking at the answer

    public static FrameDoubts Of(CarFile car, FrameSolution solution)
    {
        if (solution.Fit is not { } fit)
        {
            return new FrameDoubts([], false, null, []);
        }

        return BlunderSearch
            .Of(fit, ReadingHints.Of(car, solution.Network))
            .Match(
                nothingDoubted: _ => new FrameDoubts([], false, fit, []),
                named: o => Named(solution.Network, fit, o.Best),
                provableNotLocatable: o => Tied(solution.Network, fit, [.. o.Candidates.Take(MostCandidates)]),
                unexplained: _ => new FrameDoubts([], false, fit, [])
            );
    }

    private static FrameDoubts Named(Network network, NetworkFit fit, Explanation best)
    {
        if (Without(network, best) is not { } believed)
        {
            return new FrameDoubts([best], true, fit, [fit]);
        }

        var repeats = Repeats.ThatAgree(network, believed, best);
        return new FrameDoubts([best], true, believed, repeats.Count > 0 ? [] : [fit]) { SettledBy = repeats };
    }

    private static FrameDoubts Tied(Network network, NetworkFit fit, IReadOnlyList<Explanation> candidates) =>
        new(candidates, false, fit, [.. candidates.Select(c => Without(network, c)).OfType<NetworkFit>()]);

    /// <summary>The fit without the doubted readings; of a doubted point, without every reading that touches its mark.</summary>
    private static NetworkFit? Without(Network network, Explanation explanation)
    {
        var readings = explanation.Doubted.Select(d => d.ReadingId).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var points = explanation.Doubted.Select(d => d.Point).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var left = network.Observations.Where(o => !readings.Contains(o.Id) && !TouchesMark(o, points));
        return NetworkAdjustment.Solve(new Network(network.Points, left, network.Tools, network.MirrorPairs)).FitOrNull;
    }

    private static bool TouchesMark(Observation observation, HashSet<string> points) =>
        observation switch
        {
            Observation.PlanDistance o => points.Contains(o.From) || points.Contains(o.To),
            Observation.Offset o => points.Contains(o.Point) || points.Contains(o.From) || points.Contains(o.To),
            Observation.DropShift o => points.Contains(o.Point),
            Observation.DropDistance o => points.Contains(o.Point),
            _ => false,
        };
}
