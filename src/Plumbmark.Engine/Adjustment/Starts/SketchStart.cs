namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Start values from the sketch; what is not sketched starts at the local origin.</summary>
internal static class SketchStart
{
    public static double[] Of(CompiledNetwork network)
    {
        var x = Empty(network);
        for (var i = 0; i < network.Points.Length; i++)
        {
            foreach (var axis in Enum.GetValues<Axis>())
            {
                var u = network.Points[i].Unknown[(int)axis];
                if (u >= 0 && Known(network, i, axis) is { } known)
                {
                    x[u] = known;
                }
            }
        }

        return x;
    }

    /// <summary>Whether every plan coordinate has a sketch, and the sketch is more than one spot.</summary>
    public static bool IsComplete(CompiledNetwork network)
    {
        var spots = new HashSet<(double, double)>();
        for (var i = 0; i < network.Points.Length; i++)
        {
            var point = network.Points[i];
            if (point.IsTouched[0] || point.IsTouched[1])
            {
                if (Known(network, i, Axis.X) is not { } kx || Known(network, i, Axis.Y) is not { } ky)
                {
                    return false;
                }

                spots.Add((kx, ky));
            }
        }

        return spots.Count != 1 || network.Points.Count(p => p.IsTouched[0]) == 1;
    }

    /// <summary>Local value of a coordinate that is fixed, believed beforehand or sketched; null otherwise.</summary>
    public static double? Known(CompiledNetwork network, int point, Axis axis)
    {
        var source = network.Source.Points[point];
        var metres = source.Of(axis).Match(_ => source.SketchMetres(axis), f => f.Metres, c => c.Metres);
        return metres - network.Origin[(int)axis];
    }

    /// <summary>All unknowns at zero, tools and drop errors at their priors.</summary>
    public static double[] Empty(CompiledNetwork network)
    {
        var x = new double[network.UnknownCount];
        foreach (var point in network.Points.Where(p => p.DropError >= 0))
        {
            (x[point.DropError], x[point.DropError + 1]) = (point.Drop.MeanErrorX, point.Drop.MeanErrorY);
        }

        foreach (var tool in network.Tools)
        {
            if (tool.Zero >= 0)
            {
                x[tool.Zero] = tool.Source.ZeroMetres;
            }

            if (tool.Scale >= 0)
            {
                x[tool.Scale] = tool.Source.Scale;
            }
        }

        return x;
    }
}
