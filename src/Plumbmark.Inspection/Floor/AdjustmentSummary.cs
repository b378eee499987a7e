namespace Plumbmark.Inspection.Floor;

/// <summary>How well the readings agree with each other, before anything is said about the frame.</summary>
/// <param name="Redundancy">How many readings there are beyond the least that would fix every point.</param>
/// <param name="VarianceFactor">Weighted square sum of the misfits over the redundancy; 1 is as expected, null without redundancy.</param>
/// <param name="ChiSquareP">Probability of so large a misfit by noise alone; null without redundancy.</param>
public sealed record AdjustmentSummary(int Redundancy, double? VarianceFactor, double? ChiSquareP);
