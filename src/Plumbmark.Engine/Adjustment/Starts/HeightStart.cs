namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Start values of heights: from the reference, then along rises from point to point.</summary>
internal static class HeightStart
{
    /// <summary>Local height of each point, null where neither fixed value, height nor rise reaches it.</summary>
    public static double?[] Of(CompiledNetwork network)
    {
        var heights = new double?[network.Points.Length];
        for (var i = 0; i < heights.Length; i++)
        {
            var known = network.Source.Points[i].Z.Match(_ => null, f => f.Metres, c => (double?)c.Metres);
            heights[i] = network.Points[i].IsTouched[2] ? known - network.Origin[2] : null;
        }

        foreach (var row in network.Rows)
        {
            if (row.Kind is RowKind.Height)
            {
                var floor = network.Source.Observations[row.Observation] is Observation.Height { Floor: { } map }
                    ? FloorUnder(network, row.A, map)
                    : 0;
                heights[row.A] ??= row.Value + floor - network.Origin[2];
            }
            else if (row.Kind is RowKind.CoordinateZ)
            {
                heights[row.A] ??= row.Value;
            }
        }

        AlongRises(network, heights);
        return heights;
    }

    private static double FloorUnder(CompiledNetwork network, int point, FloorMap map) =>
        map(
            (SketchStart.Known(network, point, Axis.X) ?? 0) + network.Origin[0],
            (SketchStart.Known(network, point, Axis.Y) ?? 0) + network.Origin[1]
        );

    // A group of rises that reaches no reference starts at its first point's sketch.
    private static void AlongRises(CompiledNetwork network, double?[] heights)
    {
        var rises = network.Rows.Where(r => r.Kind is RowKind.Rise).ToList();
        while (true)
        {
            var open = rises.FirstOrDefault(r => heights[r.A] is null != heights[r.B] is null);
            if (open.Kind is RowKind.Rise)
            {
                heights[open.B] ??= heights[open.A] + open.Value;
                heights[open.A] ??= heights[open.B] - open.Value;
                continue;
            }

            var apart = rises.FirstOrDefault(r => heights[r.A] is null);
            if (apart.Kind is not RowKind.Rise)
            {
                return;
            }

            heights[apart.A] = SketchStart.Known(network, apart.A, Axis.Z) ?? 0;
        }
    }
}
