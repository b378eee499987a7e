namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>One way to account for readings that contradict each other: one or two things that are wrong.</summary>
/// <param name="Doubted">What is wrong, one or two of them.</param>
/// <param name="Probability">
/// Chance that these are wrong, whatever else may be, among all explanations that were tried, "nothing is wrong" included.
/// </param>
/// <param name="Odds">That chance against the chance that they are not all wrong.</param>
/// <param name="KindOdds">How many times likelier than the next best slip of the same readings or points.</param>
/// <param name="FitProbability">Global test of the fit without what is doubted; null when that leaves no redundancy.</param>
public sealed record Explanation(IReadOnlyList<Doubted> Doubted, double Probability, double Odds, double KindOdds, double? FitProbability);
