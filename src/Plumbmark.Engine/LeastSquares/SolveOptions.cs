namespace Plumbmark.Engine.LeastSquares;

/// <summary>When an iteration may stop.</summary>
public sealed record SolveOptions
{
    /// <summary>The defaults: go on until rounding is all that is left.</summary>
    public static SolveOptions Default { get; } = new();

    /// <summary>Steps tried, taken or not.</summary>
    public int MaximumIterations { get; init; } = 2000;

    /// <summary>
    /// Stop when the step is this small against the unknowns, both scaled by the columns of the Jacobian; the step itself is still taken.
    /// </summary>
    public double StepTolerance { get; init; } = 1e-14;

    /// <summary>Stop when no column of the Jacobian makes a larger cosine with the residuals.</summary>
    public double GradientTolerance { get; init; } = 1e-14;

    /// <summary>First Levenberg parameter, relative to the squared norms of the columns.</summary>
    public double InitialDamping { get; init; } = 1e-4;
}
