namespace Plumbmark.Engine.Adjustment;

/// <summary>Whether the readings tell a figure from its mirror image in plan.</summary>
internal static class MirrorImage
{
    /// <summary>True when neither a signed reading, nor fixed points, nor the sketch tells which of the two it is.</summary>
    public static bool IsAssumed(CompiledNetwork network)
    {
        if (
            network.Rows.Any(r => r.Kind is RowKind.Offset or RowKind.StepX)
            || !network.Rows.Any(r => r.Kind is RowKind.Plan or RowKind.Direct)
        )
        {
            return false;
        }

        var known = new List<(double X, double Y)>();
        for (var i = 0; i < network.Points.Length; i++)
        {
            var source = network.Source.Points[i];
            if (network.Points[i].IsTouched[0] && Value(source, Axis.X) is { } x && Value(source, Axis.Y) is { } y)
            {
                known.Add((x, y));
            }
        }

        return AreInOneLine(known);
    }

    private static double? Value(NetworkPoint point, Axis axis) =>
        point.Of(axis).Match(_ => point.SketchMetres(axis), f => f.Metres, u => u.Metres);

    private static bool AreInOneLine(List<(double X, double Y)> places)
    {
        const double Flat = 1e-6; // of the longest side, squared
        var (a, b) = (places.FirstOrDefault(), places.FirstOrDefault());
        foreach (var p in places)
        {
            b = double.Hypot(p.X - a.X, p.Y - a.Y) > double.Hypot(b.X - a.X, b.Y - a.Y) ? p : b;
        }

        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        return places.TrueForAll(p => Math.Abs(dx * (p.Y - a.Y) - dy * (p.X - a.X)) <= Flat * (dx * dx + dy * dy));
    }
}
