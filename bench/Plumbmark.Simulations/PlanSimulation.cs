using Plumbmark.Inspection.Car;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Simulations;

/// <summary>How few readings a plan needs for the certainty of the thorough person's list.</summary>
/// <remarks>
/// The list: every length between two points once, every height once, every point dropped so often. The plan: settles to the smallest damage that the list
/// would show, at the place where it shows least. Counted are lengths, heights and all drops, the first included.
/// </remarks>
internal static class PlanSimulation
{
    public static void Run(TextWriter output, int frames)
    {
        output.WriteLine($"{frames} frames a row, all shapes invented; tape and drops of 0.5 mm, level of 0.5 mm");
        output.WriteLine(
            $"{"drops", 5}{"pairs", 7}{"the list", 10}{"placing", 9}{"share", 7}{"planned", 9}{"lengths", 9}{"heights", 9}{"drops", 7}{"share", 7}{"most", 6}{"half", 6}{"minutes", 9}{"of list", 9}{"ms", 7}"
        );
        foreach (var drops in new[] { 1, 2, 3 })
        {
            foreach (var pairs in new[] { 5, 6, 7, 8, 9 })
            {
                Row(output, drops, pairs, frames);
            }
        }

        output.WriteLine();
        output.WriteLine(
            "the list - every length once, every height once, every point dropped so often as the first column says; the first drop counts"
        );
        output.WriteLine(
            "placing  - the least that gives every point a place at all, however unsure: 2 n - 3 lengths, n heights, n drops of n points, and"
        );
        output.WriteLine(
            "           its share of the list. Where that is near or over half no plan of all points can be half; and a plan has two lengths"
        );
        output.WriteLine("           beyond it, so that one slip in it can be found");
        output.WriteLine(
            "planned  - to the list's own certainty: 3.29 u of every suspension, spring and steering check, and 2.80 u of sidesway, diamond, mash,"
        );
        output.WriteLine(
            "           twist and sag where each shows least, are no more than the largest of them is with the whole list; share - mean, most,"
        );
        output.WriteLine("           and of how many frames it is half or less");
        output.WriteLine(
            "minutes  - of this plan of fewest readings, with the program's usual minutes for each kind; the quickest plan is quicker"
        );
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
            $"{drops, 5}{pairs, 7}{all.Average(a => a.List), 10:F0}{all[0].Placing, 9}{100.0 * all[0].Placing / all[0].List, 6:F0}%{all.Average(a => a.Planned), 9:F1}{all.Average(a => a.Lengths), 9:F1}{all.Average(a => a.Heights), 9:F1}{all.Average(a => a.Drops), 7:F1}{100 * all.Average(a => a.Share), 6:F0}%{100 * all.Max(a => a.Share), 5:F0}%{100.0 * all.Count(a => a.Share <= 0.5) / all.Count, 5:F0}%{all.Average(a => a.Minutes), 9:F0}{all.Average(a => a.ListMinutes), 9:F0}{all.Average(a => a.Milliseconds), 7:F0}"
        );
        output.Flush();
    }
}
