using Plumbmark.Engine.Adjustment.Starts;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Fits a network of points to its readings by weighted non-linear least squares.</summary>
/// <remarks>
/// <para>Minimises Σ ((model − reading) / σ)² over all coordinates that a reading touches, over the shared zero and scale of each tool, and
/// over the drop error of each point where plan and direct readings mix.</para>
/// <para>Where nothing settles the datum, inner constraints do (<see cref="DatumReport"/>). What remains undetermined is an answer:
/// <see cref="NetworkOutcome.Loose"/>.</para>
/// </remarks>
public static class NetworkAdjustment
{
    /// <summary>Fits a network.</summary>
    /// <param name="network">Points, readings, tools.</param>
    /// <param name="near">
    /// A fit of nearly the same network (a reading more or less): iterating starts from it, which saves the search for a start.
    /// </param>
    public static NetworkOutcome Solve(Network network, NetworkFit? near = null)
    {
        var faults = NetworkCheck.Faults(network);
        if (faults.Count > 0)
        {
            return new NetworkOutcome.Refused(faults);
        }

        var compiled = NetworkCompiler.Compile(network);
        var motions = RigidMotions.Of(compiled);
        var solver = new NetworkSolver(compiled, motions);
        var rest = RestSearch.Of(solver, near);
        var placed = DatumPlacement.OnSketch(solver, rest);
        var outcome = NetworkFinish.Of(solver, placed.X, placed.Summary, MirrorImage.IsAssumed(compiled));

        // Points that hang loose may never come to rest; that they are loose is the better answer.
        return rest.Summary.IsSolutionUsable || outcome is NetworkOutcome.Loose ? outcome : new NetworkOutcome.NotConverged(rest.Summary);
    }

    /// <summary>Adds one reading to a fit: the answer while the tape is still in the hand.</summary>
    /// <remarks>
    /// Where the reading only checks or sharpens what is placed already, the fit is brought up to date without a solve (a fraction of a millisecond for a whole frame);
    /// otherwise, and where it moves the points noticeably, the network is solved from the old places.
    /// </remarks>
    public static NetworkOutcome Add(NetworkFit fit, Observation reading)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(reading);
        return OneMoreReading.Of(fit, reading) is { } updated
            ? new NetworkOutcome.Adjusted(updated)
            : Solve(fit.State.Network.Source.With(reading), fit);
    }

    /// <summary>Fits a network that differs little from one that is fitted, from that fit alone: for trials, where another start would cost more than it brings.</summary>
    internal static NetworkOutcome SolveNear(Network network, NetworkFit near)
    {
        var compiled = NetworkCompiler.Compile(network);
        var solver = new NetworkSolver(compiled, RigidMotions.Of(compiled));
        var rest = solver.Iterate(new StartFinder(compiled).Near(near));
        if (!rest.Summary.IsSolutionUsable)
        {
            return new NetworkOutcome.NotConverged(rest.Summary);
        }

        return NetworkFinish.Of(solver, rest.X, rest.Summary, near.Datum.MirrorIsAssumed);
    }
}
