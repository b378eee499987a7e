namespace Plumbmark.Engine.Bending;

/// <summary>Between which stresses a steel is expected to yield.</summary>
/// <param name="LowPascals">Lower end, Pa.</param>
/// <param name="HighPascals">Upper end, Pa; above the lower.</param>
public sealed record YieldRange(double LowPascals, double HighPascals)
{
    /// <summary>Geometric middle, Pa: as likely to be low by a share as to be high by it.</summary>
    public double MiddlePascals => Math.Sqrt(LowPascals * HighPascals);
}
