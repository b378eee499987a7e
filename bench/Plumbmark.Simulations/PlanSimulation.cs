using Plumbmark.Inspection.Car;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Simulations;

/// <summary>How few readings a plan needs for the certainty of the thorough person's list.</summary>
/// <remarks>
/// The list: every length between two points once, every height once, every point dropped so often. The plan: settles to the smallest damage that the list would show,
/// at the place where it shows least. Counted are lengths, heights and all drops, the first included.
/// </remarks>
internal static class PlanSimulation
{
    public static void Run(TextWriter output, int frames)
    {
        output.WriteLine($"{frames} frames a row, all shapes invented; tape and drops of 0.5 mm, level of 0.5 mm");
        output.WriteLine(
            $"{"drops", 5}{"pairs", 7}{"the list", 10}{"planned", 9}{"lengths", 9}{"heights", 9}{"drops", 7}{"share", 7}{"most", 6}{"minutes", 9}{"of list", 9}{"ms", 7}"
        );
        foreach (var drops in new[] { 1, 2, 3 })
        {
            foreach (var pairs in new[] { 5, 6, 7, 8, 9 })
            {
                Row(output, drops, pairs, frames);
            }
        }
    }

    private static void Row(TextWriter output, int drops, int pairs, int frames)
    {
        var all = new List<AllPairs.Comparison>();
        for (var i = 0; all.Count < frames; i++)
        {
            var random = new Random(5000 + i);
            var design = FrameDesign.Random(random);
            if (design.Stations.Count == pairs)
            {
                var style = new SurveyStyle { Reach = 0, Heights = false };
                var car = SimulatedSurvey.Measure(new TrueFrame(design), style, random) with { Readings = [] };
                all.Add(AllPairs.Against(car, drops));
            }
        }

        output.WriteLine(
            $"{drops, 5}{pairs, 7}{all.Average(a => a.List), 10:F0}{all.Average(a => a.Planned), 9:F1}{all.Average(a => a.Lengths), 9:F1}{all.Average(a => a.Heights), 9:F1}{all.Average(a => a.Drops), 7:F1}{100 * all.Average(a => a.Share), 6:F0}%{100 * all.Max(a => a.Share), 5:F0}%{all.Average(a => a.Minutes), 9:F0}{all.Average(a => a.ListMinutes), 9:F0}{all.Average(a => a.Milliseconds), 7:F0}"
        );
        output.Flush();
    }
}
