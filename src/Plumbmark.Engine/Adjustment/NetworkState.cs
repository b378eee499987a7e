using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The solution in the solver's own terms, kept so that later questions need no second solve.</summary>
internal sealed record NetworkState(
    NetworkSolver Solver,
    double[] Unknowns,
    LinearRows Rows,
    Cofactor Cofactor,
    int Rank,
    IReadOnlySet<int> Undetermined,
    SolveSummary Summary
)
{
    public CompiledNetwork Network => Solver.Network;

    public RigidMotions Motions => Solver.Motions;

    /// <summary>vᵀPv.</summary>
    public double WeightedSquares { get; } = Dense.SumOfSquares(Rows.Misclosures);

    /// <summary>aᵢ Q aⱼᵀ of two rows.</summary>
    public double CrossLeverage(int i, int j)
    {
        var columnsI = Network.ColumnsOf(i);
        var columnsJ = Network.ColumnsOf(j);
        var valuesI = Rows.DerivativesOf(i);
        var valuesJ = Rows.DerivativesOf(j);
        var sum = 0.0;
        for (var s = 0; s < columnsI.Length; s++)
        {
            for (var t = 0; columnsI[s] >= 0 && t < columnsJ.Length; t++)
            {
                sum += columnsJ[t] >= 0 ? valuesI[s] * valuesJ[t] * Cofactor.Of(columnsI[s], columnsJ[t]) : 0;
            }
        }

        return sum;
    }

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

    /// <summary>Change of every unknown for each metre of error in a row's reading: Q aᵀ / σ with the weighted row.</summary>
    public double[] Influence(int row)
    {
        var a = new double[Network.UnknownCount];
        var columns = Network.ColumnsOf(row);
        var values = Rows.DerivativesOf(row);
        for (var s = 0; s < columns.Length; s++)
        {
            if (columns[s] >= 0)
            {
                a[columns[s]] += values[s] / Network.Rows[row].Sigma;
            }
        }

        return Cofactor.Times(a);
    }
}
