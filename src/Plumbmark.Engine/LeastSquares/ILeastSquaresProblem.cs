namespace Plumbmark.Engine.LeastSquares;

/// <summary>A model whose residuals are to be made small: r(x) = weighted (model − observed), and its derivatives.</summary>
/// <remarks>Residuals that are not finite mean "x is outside the model's range"; the iteration then tries a shorter step.</remarks>
public interface ILeastSquaresProblem
{
    /// <summary>Number of unknowns, n.</summary>
    int UnknownCount { get; }

    /// <summary>Number of residuals, m.</summary>
    int EquationCount { get; }

    /// <summary>Fills the m residuals.</summary>
    void Residuals(ReadOnlySpan<double> unknowns, Span<double> residuals);

    /// <summary>Fills the m × n derivatives ∂r_i / ∂x_j, row-major.</summary>
    void Jacobian(ReadOnlySpan<double> unknowns, Span<double> rowMajor);
}
