namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>One thing that may be wrong, or two, and how the readings take it.</summary>
/// <param name="Doubted">What is wrong.</param>
/// <param name="LogOdds">ln of prior times evidence, relative to "nothing is wrong".</param>
/// <param name="FitProbability">Global test of the fit without what is doubted; null without redundancy.</param>
internal sealed record Hypothesis(IReadOnlyList<Doubted> Doubted, double LogOdds, double? FitProbability);
