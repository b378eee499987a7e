namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>One way to account for readings that contradict each other: one or two things that are wrong.</summary>
/// <param name="Doubted">What is wrong, one or two of them.</param>
/// <param name="Probability">Chance of this explanation among all that were tried, "nothing is wrong" included.</param>
/// <param name="Odds">How many times likelier than the next best explanation that doubts something else (or nothing).</param>
/// <param name="KindOdds">How many times likelier than the next best slip of the same readings or points.</param>
/// <param name="FitProbability">Global test of the fit without what is doubted; null when that leaves no redundancy.</param>
public sealed record Explanation(IReadOnlyList<Doubted> Doubted, double Probability, double Odds, double KindOdds, double? FitProbability);
