using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Adjustment;

/// <summary>What all drops of one point say: how many, where their mean lies, and how sure the first mark therefore is.</summary>
/// <remarks>
/// <para>Mark k is point + e_k, every e_k independent with variance σ² per axis. Shifts δ_k = e_k − e_1 of the later marks give, by least
/// squares, ê_1 = −Σ δ_k / n with variance σ² / n per axis: the point is the mean of its marks.</para>
/// <para>Of a drop kept only as a distance d the direction is unknown; it shifts nothing and leaves the mean d / n uncertain in every
/// direction alike: variance σ² / n + Σ d² / (2 n²) per axis (the directions taken as independent). On average over d that gives
/// back σ² for one such drop: a distance alone tells about the spread, and tells more about the place only when it is small.</para>
/// </remarks>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct DropRecord(int Count, double MeanErrorX, double MeanErrorY, double Variance)
{
    /// <summary>Gathers the drops of a point.</summary>
    public static DropRecord Of(NetworkPoint point, IEnumerable<Observation> observations)
    {
        var (count, sumX, sumY, squares) = (1, 0.0, 0.0, 0.0);
        foreach (var observation in observations)
        {
            switch (observation)
            {
                case Observation.DropShift o when o.Point == point.Id:
                    (count, sumX, sumY) = (count + 1, sumX + o.DxMetres, sumY + o.DyMetres);
                    break;
                case Observation.DropDistance o when o.Point == point.Id:
                    (count, squares) = (count + 1, squares + o.ValueMetres * o.ValueMetres);
                    break;
            }
        }

        return Of(point.DropSigmaMetres, count, sumX, sumY, squares);
    }

    /// <summary>The record for n drops with the sums given; without a drop error the mark is the point, whatever was dropped again.</summary>
    public static DropRecord Of(double sigma, int count, double sumX, double sumY, double squaredDistances) =>
        sigma > 0
            ? new DropRecord(count, -sumX / count, -sumY / count, sigma * sigma / count + squaredDistances / (2.0 * count * count))
            : new DropRecord(count, 0, 0, 0);
}
