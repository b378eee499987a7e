namespace Plumbmark.Inspection.Bench;

/// <summary>A bore at two depths and in two directions: how round, how tapered, how worn against what goes into it.</summary>
internal static class BoreReduction
{
    public static void Add(ReductionWork work, Measure.Bore m)
    {
        var doubt = work.DoubtOf(m);
        var (sigma, tool) = (doubt.ReadingMetres, doubt.ToolMetres);
        var (mouth, deep) = (ReductionWork.Metres(m.Mouth), ReductionWork.Metres(m.Deep));
        double[] all = [.. mouth, .. deep];
        void Put(string what, DimensionNature nature, double value, double readingU, double toolU) =>
            work.Add(new DimensionValue($"{m.Name}.{what}", Quantity.Length, nature, value, readingU, toolU, m.Tool, [m.Id]));

        Put("diameter", DimensionNature.Diameter, all.Average(), sigma / Math.Sqrt(all.Length), tool);
        // The larger of the two depths: first direction less second. The tool's own error drops out of a difference.
        var oval = new[] { mouth, deep }.Where(d => d.Length == 2).Select(d => d[0] - d[1]).MaxBy(Math.Abs);
        Put("ovality", DimensionNature.Roundness, oval, sigma * Math.Sqrt(2), 0);
        if (deep.Length == 2)
        {
            Put("taper", DimensionNature.Roundness, mouth.Average() - deep.Average(), sigma, 0);
        }

        if (m.Mate is { } mate)
        {
            var play = all.Max() - mate.Metres;
            // Bore and mate are each read once here.
            var u = sigma * Math.Sqrt(2);
            if (m.MateIs == BoreMate.Pin)
            {
                Put("clearance", DimensionNature.Clearance, play, u, tool);
            }
            else
            {
                Put("grip", DimensionNature.Grip, -play, u, tool);
            }
        }

        // In a direction nobody noted an oval bore may be anything between its two diameters.
        var half = Math.Abs(mouth[0] - mouth[1]);
        work.Bores[m.Name] = (mouth.Average(), Math.Sqrt((sigma * sigma / 2) + (tool * tool) + (half * half / 12)));
    }
}
