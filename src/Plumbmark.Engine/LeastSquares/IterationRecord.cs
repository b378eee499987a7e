using System.Runtime.InteropServices;

namespace Plumbmark.Engine.LeastSquares;

/// <summary>One line of the iteration log.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="SumOfSquares">Sum of squares of the weighted residuals after the step, if it was taken; before it otherwise.</param>
/// <param name="GradientCosine">
/// The largest cosine between the residuals and a column of the Jacobian before the step: 0 at a stationary point, at most 1.
/// </param>
/// <param name="StepNorm">Length of the step in scaled unknowns.</param>
/// <param name="Damping">Levenberg parameter of the step; 0 is plain Gauss-Newton.</param>
/// <param name="IsAccepted">False: the step would have made the sum of squares larger and was not taken.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct IterationRecord(
    int Number,
    double SumOfSquares,
    double GradientCosine,
    double StepNorm,
    double Damping,
    bool IsAccepted
);
