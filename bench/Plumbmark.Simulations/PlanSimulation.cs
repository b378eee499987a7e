using Plumbmark.Inspection.Floor;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Simulations;

/// <summary>How few readings a plan needs for the certainty of the thorough person's list.</summary>
internal static class PlanSimulation
{
    public static void Run(TextWriter output, int frames)
    {
        Plans(output, frames);
    }

    /// <summary>Readings of a plan against those of the all-pairs list, both to the certainty that the all-pairs list reaches.</summary>
    private static void Plans(TextWriter output, int frames)
    {
        output.WriteLine();
        output.WriteLine("pairs   all lengths + heights + drops   planned   share");
        foreach (var pairs in new[] { 5, 6, 7, 8, 9 })
        {
            var shares = new List<(int All, int Planned)>();
            for (var i = 0; shares.Count < frames / 5 && i < 10_000; i++)
            {
                var random = new Random(5000 + i);
                var design = FrameDesign.Random(random);
                if (design.Stations.Count != pairs)
                {
                    continue;
                }

                var car = SimulatedSurvey.Measure(
                    new TrueFrame(design),
                    new SurveyStyle
                    {
                        Drops = 1,
                        Reach = 0,
                        Heights = false,
                    },
                    random
                );
                shares.Add(AllPairs.Against(car with { Readings = [] }));
            }

            if (shares.Count > 0)
            {
                var share = shares.Average(s => (double)s.Planned / s.All);
                output.WriteLine(
                    $"{pairs, 5}   {shares.Average(s => s.All), 29:F1}   {shares.Average(s => s.Planned), 7:F1}   {100 * share, 4:F0}%"
                );
            }
        }
    }
}
