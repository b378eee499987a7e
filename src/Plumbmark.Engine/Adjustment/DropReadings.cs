namespace Plumbmark.Engine.Adjustment;

/// <summary>Residuals of repeated drops against the mean of all marks of their point.</summary>
/// <remarks>
/// With n marks of variance σ² per axis, the k-th shift from the first has the residual v_k = δ̄ − δ_k, δ̄ = Σ δ / n (the first mark's own shift is
/// zero), with variance σ² (1 − 1/n): redundancy number 1 − 1/n. A drop kept as a distance has no direction to compare, so it is listed
/// unchecked here; it is judged by its size in the repeat test.
/// </remarks>
internal static class DropReadings
{
    public static Dictionary<string, ReadingEstimate> Of(NetworkState state)
    {
        var points = state.Network.Source.Points.Zip(state.Network.Points).ToDictionary(p => p.First.Id, p => p, StringComparer.Ordinal);
        var result = new Dictionary<string, ReadingEstimate>(StringComparer.Ordinal);
        foreach (var observation in state.Network.Source.Observations)
        {
            switch (observation)
            {
                case Observation.DropShift o:
                    result[o.Id] = Shift(o, points[o.Point].First.DropSigmaMetres, points[o.Point].Second.Drop);
                    break;
                case Observation.DropDistance o:
                    var sigma = points[o.Point].First.DropSigmaMetres;
                    result[o.Id] = new(o.Id, o.ValueMetres, o.ValueMetres, 0, sigma, 0, null, null);
                    break;
            }
        }

        return result;
    }

    private static ReadingEstimate Shift(Observation.DropShift o, double sigma, DropRecord drop)
    {
        var residual = double.Hypot(-drop.MeanErrorX - o.DxMetres, -drop.MeanErrorY - o.DyMetres);
        var redundancy = sigma > 0 ? 1 - 1.0 / drop.Count : 0;
        var root = Math.Sqrt(redundancy);
        var isChecked = redundancy > 0;
        return new ReadingEstimate(
            o.Id,
            o.ValueMetres,
            o.ValueMetres + residual,
            residual,
            sigma,
            redundancy,
            isChecked ? residual / (sigma * root) : null,
            isChecked ? Detection.Delta0 * sigma / root : null
        );
    }
}
