namespace Plumbmark.Engine.LeastSquares;

/// <summary>How an iteration went: why it stopped and what it did on the way.</summary>
/// <param name="Reason">Why it stopped.</param>
/// <param name="SumOfSquares">Sum of squares of the weighted residuals where it stopped.</param>
/// <param name="Iterations">One record for each step tried.</param>
public sealed record SolveSummary(StopReason Reason, double SumOfSquares, IReadOnlyList<IterationRecord> Iterations)
{
    /// <summary>Whether the place where it stopped is a (local) minimum and not merely where patience ended.</summary>
    public bool IsSolutionUsable => Reason is not (StopReason.Plateau or StopReason.IterationLimit or StopReason.StartNotFinite);
}
