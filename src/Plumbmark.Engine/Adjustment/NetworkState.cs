using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The solution in the solver's own terms, kept so that later questions need no second solve.</summary>
internal sealed record NetworkState(
    CompiledNetwork Network,
    double[] Unknowns,
    LinearRows Rows,
    Cofactor Cofactor,
    RigidMotions Motions,
    IReadOnlySet<int> Undetermined,
    SolveSummary Summary
)
{
    /// <summary>vᵀPv.</summary>
    public double WeightedSquares { get; } = Dense.SumOfSquares(Rows.Misclosures);

    /// <summary>aᵢ Q aᵢᵀ of a row: the share of its weighted error that the unknowns swallow, 0 to 1.</summary>
    public double Leverage(int row)
    {
        var columns = Network.ColumnsOf(row);
        var values = Rows.DerivativesOf(row);
        var sum = 0.0;
        for (var s = 0; s < columns.Length; s++)
        {
            for (var t = 0; columns[s] >= 0 && t <= s; t++)
            {
                if (columns[t] >= 0)
                {
                    sum += (s == t ? 1 : 2) * values[s] * values[t] * Cofactor.Of(columns[s], columns[t]);
                }
            }
        }

        return sum;
    }
}
