namespace Plumbmark.Engine.Hypotheses;

/// <summary>How large a set of effects is when they are fitted together, and how much they explain.</summary>
/// <param name="Amounts">The amount of each effect, in the unit of the values per unit of its column.</param>
/// <param name="Covariance">Their covariance (k = 1).</param>
/// <param name="ChiSquareDrop">By how much the squared misfit falls below that of no effect at all.</param>
public sealed record EffectFit(double[] Amounts, double[,] Covariance, double ChiSquareDrop);
