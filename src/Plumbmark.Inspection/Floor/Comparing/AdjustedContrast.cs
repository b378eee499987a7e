namespace Plumbmark.Inspection.Floor.Comparing;

/// <summary>A contrast after the frame's lie has been taken out: what a check looks at.</summary>
/// <param name="Contrast">What is compared.</param>
/// <param name="ValueMetres">How far it is from what it should be.</param>
/// <param name="UMetres">Its standard uncertainty, from the full covariance and with that of the lie.</param>
/// <param name="Weights">It as a weighted sum of the frame's coordinates, in their order.</param>
internal sealed record AdjustedContrast(Contrast Contrast, double ValueMetres, double UMetres, double[] Weights);
