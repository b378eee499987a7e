using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>A network solved by itself, with no word about frames: what <c>plumbmark adjust</c> prints.</summary>
/// <param name="Network">What went in.</param>
/// <param name="Outcome">What came of it.</param>
public sealed record AdjustAnswer(FrameNetwork Network, NetworkOutcome Outcome)
{
    /// <summary>Whether every point touched by a reading has been placed.</summary>
    public bool IsComplete => Outcome is NetworkOutcome.Adjusted;

    /// <summary>Solves the network of a car's readings.</summary>
    public static AdjustAnswer Of(CarFile car)
    {
        var network = FrameNetwork.Of(car);
        return new AdjustAnswer(network, NetworkAdjustment.Solve(network.Network));
    }
}
