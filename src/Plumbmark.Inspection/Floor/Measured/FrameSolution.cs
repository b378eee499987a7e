using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>A car's readings as a network, fitted as far as they go.</summary>
/// <param name="Network">The network.</param>
/// <param name="Outcome">What came of fitting it.</param>
internal sealed record FrameSolution(Network Network, NetworkOutcome Outcome)
{
    /// <summary>The fit, complete or loose; null when there is none.</summary>
    public NetworkFit? Fit => Outcome.FitOrNull;

    public static FrameSolution Of(CarFile car)
    {
        var network = ProvisionalNetwork.Of(car);
        return new FrameSolution(network, NetworkAdjustment.Solve(network));
    }
}
