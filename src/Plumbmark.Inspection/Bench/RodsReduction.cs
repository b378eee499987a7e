namespace Plumbmark.Inspection.Bench;

/// <summary>Whether two eyes are parallel and in one plane, from rods pushed through them. The plate under them need not be level.</summary>
internal static class RodsReduction
{
    public static void Add(ReductionWork work, Measure.Rods m)
    {
        var sigma = work.DoubtOf(m).ReadingMetres;
        var span = m.Span.Metres;
        void Put(string what, double radians, double u) =>
            work.Add(new DimensionValue($"{Pair(m)}.{what}", Quantity.Angle, DimensionNature.Trueness, radians, u, 0, m.Tool, [m.Id]));

        if (m.Near is { } near && m.Far is { } far)
        {
            // Positive: the rods open towards the far place.
            Put("parallel", Math.Atan((far.Metres - near.Metres) / span), sigma * Math.Sqrt(2) / span);
        }

        if (m.FromHeights is { } a && m.ToHeights is { } b)
        {
            // Positive: seen along the rods, the second rises more towards the far place than the first. A tilted plate tilts both alike.
            var first = Math.Atan((a.Second.Metres - a.First.Metres) / span);
            var second = Math.Atan((b.Second.Metres - b.First.Metres) / span);
            Put("twist", second - first, 2 * sigma / span);
        }
    }

    private static string Pair(Measure.Rods m) => string.CompareOrdinal(m.From, m.To) <= 0 ? $"{m.From}/{m.To}" : $"{m.To}/{m.From}";
}
