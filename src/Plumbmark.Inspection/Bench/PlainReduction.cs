namespace Plumbmark.Inspection.Bench;

/// <summary>Measures that are a dimension already: a length, an angle, a run-out, a difference seen back to back.</summary>
internal static class PlainReduction
{
    /// <summary>A protractor or digital level, both sides of the angle read: 0.15 degrees (common practice, no published source).</summary>
    private const double AngleDegrees = 0.15;

    public static void Add(ReductionWork work, Measure.Plain m, PartKind kind)
    {
        var doubt = work.DoubtOf(m);
        var (mean, u) = ReductionWork.Mean(ReductionWork.Metres(m.Values), doubt.ReadingMetres);
        var nature = kind == PartKind.CoilSpring ? DimensionNature.Spring : DimensionNature.Shape;
        work.Add(new DimensionValue(m.Dimension, Quantity.Length, nature, mean, u, doubt.ToolMetres, m.Tool, [m.Id]));
    }

    public static void Add(ReductionWork work, Measure.Angle m)
    {
        var (mean, u) = ReductionWork.Mean([.. m.Degrees.Select(d => d.Si)], AngleDegrees * Math.PI / 180);
        work.Add(new DimensionValue(m.Dimension, Quantity.Angle, DimensionNature.Shape, mean, u, 0, m.Tool, [m.Id]));
    }

    /// <summary>Full movement of the dial; the axis is bent by half of it. The dial's zero drops out of a difference.</summary>
    public static void Add(ReductionWork work, Measure.RunOut m)
    {
        var readings = ReductionWork.Metres(m.Readings);
        var u = work.DoubtOf(m).ReadingMetres * Math.Sqrt(2);
        work.Add(
            new DimensionValue(
                m.Dimension,
                Quantity.Length,
                DimensionNature.Trueness,
                readings.Max() - readings.Min(),
                u,
                0,
                m.Tool,
                [m.Id]
            )
        );
    }

    public static void Add(ReductionWork work, Measure.BackToBack m)
    {
        var doubt = work.DoubtOf(m);
        foreach (var difference in m.Differences)
        {
            work.SideDifferences.Add(
                new DimensionValue(
                    difference.Dimension,
                    Quantity.Length,
                    DimensionNature.Shape,
                    difference.Value.Metres,
                    doubt.ReadingMetres,
                    0,
                    m.Tool,
                    [m.Id]
                )
            );
        }
    }
}
