using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The weighted equations of a network at one place: misclosures and sparse derivatives, both divided by sigma.</summary>
internal sealed class LinearRows(CompiledNetwork network)
{
    public CompiledNetwork Network { get; } = network;

    /// <summary>Weighted misclosures (model − value) / σ.</summary>
    public double[] Misclosures { get; } = new double[network.RowCount];

    /// <summary>Weighted derivatives, <see cref="CompiledNetwork.Stride"/> for each row, beside the columns of the network.</summary>
    public double[] Derivatives { get; } = new double[network.RowCount * CompiledNetwork.Stride];

    public ReadOnlySpan<double> DerivativesOf(int row) => Derivatives.AsSpan(row * CompiledNetwork.Stride, CompiledNetwork.Stride);

    /// <summary>Fills the misclosures only and returns their sum of squares.</summary>
    public double Evaluate(ReadOnlySpan<double> x)
    {
        for (var i = 0; i < Misclosures.Length; i++)
        {
            Misclosures[i] = RowModel.Misclosure(Network, Network.Rows[i], Network.FloorMetres[i], x) / Network.Rows[i].Sigma;
        }

        return Dense.SumOfSquares(Misclosures);
    }

    /// <summary>Fills misclosures and derivatives.</summary>
    public void Linearise(ReadOnlySpan<double> x)
    {
        Evaluate(x);
        for (var i = 0; i < Misclosures.Length; i++)
        {
            var slots = Derivatives.AsSpan(i * CompiledNetwork.Stride, CompiledNetwork.Stride);
            RowModel.Derivatives(Network, Network.Rows[i], Network.FloorMetres[i], x, slots);
            var weight = 1 / Network.Rows[i].Sigma;
            for (var s = 0; s < slots.Length; s++)
            {
                slots[s] *= weight;
            }
        }
    }

    /// <summary>The product of a row of derivatives with a vector over the unknowns.</summary>
    public double Product(int row, ReadOnlySpan<double> direction)
    {
        var sum = 0.0;
        var columns = Network.ColumnsOf(row);
        var values = DerivativesOf(row);
        for (var s = 0; s < columns.Length; s++)
        {
            sum += columns[s] >= 0 ? values[s] * direction[columns[s]] : 0;
        }

        return sum;
    }
}
