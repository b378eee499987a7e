using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>The distance of two bores from centre to centre, whatever it was measured over.</summary>
internal static class CentresReduction
{
    public static void Add(ReductionWork work, Measure.Centres m)
    {
        var doubt = work.DoubtOf(m);
        var (mean, u) = ReductionWork.Mean(ReductionWork.Metres(m.Values), doubt.ReadingMetres);
        if (m.Over != CentresOver.Centre)
        {
            string[] missing = [.. new[] { m.From, m.To }.Where(b => !work.Bores.ContainsKey(b))];
            if (missing.Length > 0)
            {
                work.Wanting.Add(
                    Texts.Say(
                        "bench.centres-reduction.the-distance-from-to-was",
                        m.From,
                        m.To,
                        m.Over == CentresOver.Inside ? "between" : "over",
                        string.Join(" and ", missing)
                    )
                );
                return;
            }

            // centre = inside + (d1 + d2) / 2 = outside - (d1 + d2) / 2
            var (from, to) = (work.Bores[m.From], work.Bores[m.To]);
            var half = (from.Metres + to.Metres) / 2;
            mean += m.Over == CentresOver.Inside ? half : -half;
            u = Math.Sqrt((u * u) + (((from.U * from.U) + (to.U * to.U)) / 4));
        }

        work.Add(new DimensionValue(Name(m.From, m.To), Quantity.Length, DimensionNature.Shape, mean, u, doubt.ToolMetres, m.Tool, [m.Id]));
    }

    /// <summary>The name of the distance of two bores: the same from either end.</summary>
    public static string Name(string from, string to) =>
        string.CompareOrdinal(from, to) <= 0 ? $"{from}/{to}.centres" : $"{to}/{from}.centres";
}
