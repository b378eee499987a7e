using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>A car's readings as a network, fitted as far as they go.</summary>
/// <param name="Readings">The readings as observations, with how sure each is.</param>
/// <param name="Outcome">What came of fitting them.</param>
internal sealed record FrameSolution(FrameNetwork Readings, NetworkOutcome Outcome)
{
    /// <summary>The network.</summary>
    public Network Network => Readings.Network;

    /// <summary>The fit, complete or loose; null when there is none.</summary>
    public NetworkFit? Fit => Outcome.FitOrNull;

    /// <summary>Points that nothing ties to the rest.</summary>
    public IReadOnlyList<FloatingGroup> Floating => Outcome is NetworkOutcome.Loose loose ? NetworkWords.Floating(loose.Defect) : [];

    public static FrameSolution Of(CarFile car)
    {
        var readings = FrameNetwork.Of(car);
        return new FrameSolution(readings, NetworkAdjustment.Solve(readings.Network));
    }
}
