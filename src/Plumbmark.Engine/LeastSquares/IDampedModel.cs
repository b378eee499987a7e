using System.Runtime.InteropServices;

namespace Plumbmark.Engine.LeastSquares;

/// <summary>What <see cref="DampedGaussNewton"/> asks of a model; how the linear step is solved (dense QR, sparse Cholesky) stays inside.</summary>
internal interface IDampedModel
{
    int UnknownCount { get; }

    /// <summary>Sum of squares of the weighted residuals at x.</summary>
    double SumOfSquares(ReadOnlySpan<double> x);

    /// <summary>Prepares derivatives and factor at x.</summary>
    Linearisation Linearise(ReadOnlySpan<double> x);

    /// <summary>
    /// The step that minimises |r + J δ|² + damping |D δ|², D the column scales. False when it cannot be solved.
    /// </summary>
    bool TryStep(double damping, Span<double> step, out StepForecast forecast);

    /// <summary>
    /// An undamped step from the gradient here; a factor from a place nearby may serve, since only the gradient decides where it ends.
    /// </summary>
    bool TryPolishingStep(Span<double> step, out StepForecast forecast);
}

/// <summary>The state of a linearised model at a place.</summary>
/// <param name="GradientCosine">Largest |cos| between the residuals and a column of the Jacobian.</param>
/// <param name="ScaledSize">|D x|.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Linearisation(double GradientCosine, double ScaledSize);

/// <summary>What the linearised model promises for a step.</summary>
/// <param name="Reduction">Predicted fall of the sum of squares.</param>
/// <param name="ScaledNorm">|D δ|.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct StepForecast(double Reduction, double ScaledNorm);
