namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Turns a figure that stands nowhere so that left is to the left: y along the mean step from right partners to left partners.</summary>
/// <remarks>
/// Left and right alone do not tell front from rear; the pair listed first is put to the front. Without pairs x runs along the figure's longest
/// extent.
/// </remarks>
internal static class CentreLine
{
    public static double[]?[] Along(CompiledNetwork network, double[]?[] places, int dimension)
    {
        var placed = places.OfType<double[]>().ToList();
        if (placed.Count < 2)
        {
            return places;
        }

        var index = network.Points.Select((p, i) => (p.Id, i)).ToDictionary(t => t.Id, t => t.i, StringComparer.Ordinal);
        var pairs = network
            .Source.MirrorPairs.Where(p => index.ContainsKey(p.Left) && index.ContainsKey(p.Right))
            .Select(p => (Left: places[index[p.Left]], Right: places[index[p.Right]]))
            .Where(p => p.Left is not null && p.Right is not null)
            .ToList();
        var middle = Enumerable.Range(0, dimension).Select(a => placed.Average(p => p[a])).ToArray();
        var angle = pairs.Count > 0 ? AcrossPairs(pairs!) : LongestExtent(placed, middle);
        var (sin, cos) = Math.SinCos(angle);
        var turned = places.Select(p => p is null ? null : Turn(p, middle, sin, cos)).ToArray();
        var front = Front(
            turned,
            pairs.Count > 0 ? [.. network.Source.MirrorPairs.Where(p => index.ContainsKey(p.Left)).Select(p => index[p.Left])] : []
        );
        return front >= 0 ? turned : [.. turned.Select(p => p is null ? null : Flip(p))];
    }

    // The direction of x: a quarter turn clockwise from the mean step right → left.
    private static double AcrossPairs(List<(double[] Left, double[] Right)> pairs)
    {
        var (dx, dy) = (pairs.Sum(p => p.Left[0] - p.Right[0]), pairs.Sum(p => p.Left[1] - p.Right[1]));
        return Math.Atan2(-dx, dy);
    }

    private static double LongestExtent(List<double[]> placed, double[] middle)
    {
        var (xx, xy, yy) = (0.0, 0.0, 0.0);
        foreach (var p in placed)
        {
            var (dx, dy) = (p[0] - middle[0], p[1] - middle[1]);
            (xx, xy, yy) = (xx + dx * dx, xy + dx * dy, yy + dy * dy);
        }

        return 0.5 * Math.Atan2(2 * xy, xx - yy);
    }

    private static double[] Turn(double[] p, double[] middle, double sin, double cos)
    {
        var (dx, dy) = (p[0] - middle[0], p[1] - middle[1]);
        return [cos * dx + sin * dy, -sin * dx + cos * dy, .. p.Skip(2).Select(z => z - middle[2])];
    }

    // Positive when the first of the points named stands ahead of the last (without names: the first of all).
    private static double Front(double[]?[] turned, int[] named)
    {
        var order = named.Length > 0 ? named.Select(i => turned[i]).OfType<double[]>().ToList() : [.. turned.OfType<double[]>()];
        return order.Count < 2 ? 0 : order[0][0] - order[^1][0];
    }

    // Front and rear exchanged, left kept left: the mirror image.
    private static double[] Flip(double[] p) => [-p[0], .. p.Skip(1)];
}
