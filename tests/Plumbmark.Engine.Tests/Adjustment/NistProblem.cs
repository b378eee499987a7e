using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>A non-linear NIST set as the project's solver sees it: residual = model − observed, all of weight one.</summary>
internal sealed class NistProblem(NistDataSet set) : ILeastSquaresProblem
{
    private readonly NistModels.Model _model = NistModels.ByName[set.Name];

    // Nelson's model is of log y.
    private readonly double[] _observed = set.Name == "Nelson" ? [.. set.Observed.Select(y => Math.Log(y))] : set.Observed;

    public int UnknownCount => set.Parameters.Length;

    public int EquationCount => _observed.Length;

    public void Residuals(ReadOnlySpan<double> unknowns, Span<double> residuals)
    {
        Span<double> unused = stackalloc double[UnknownCount];
        for (var i = 0; i < _observed.Length; i++)
        {
            residuals[i] = _model(unknowns, set.Places[i], unused) - _observed[i];
        }
    }

    public void Jacobian(ReadOnlySpan<double> unknowns, Span<double> rowMajor)
    {
        for (var i = 0; i < _observed.Length; i++)
        {
            _model(unknowns, set.Places[i], rowMajor.Slice(i * UnknownCount, UnknownCount));
        }
    }
}
