using Plumbmark.Inspection.Floor;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Simulations;

internal static class Debug1
{
    public static int Run()
    {
        for (int i = 0; i < 100; i++)
        {
            var random = new Random(1000 + i);
            var d = FrameDesign.Random(random);
            var car = SimulatedSurvey.Measure(new TrueFrame(d), new SurveyStyle { Drops = 1 + random.Next(3) }, random);
            var a = FloorInspection.Of(car);
            if (a.Damage.Count > 0)
                Console.WriteLine("good " + i + " " + a.Damage[0] + (a.Damage.Count > 1 ? a.Damage[1].Form + a.Damage[1].Odds : ""));
            random = new Random(1000 + i);
            d = FrameDesign.Random(random);
            car = SimulatedSurvey.Measure(
                new TrueFrame(d).Sidesway(random.Next(1, (d.Stations.Count - 1) / 2 + 1), (random.Next(2) * 2 - 1) * 6.35, true),
                new SurveyStyle { Drops = 1 + random.Next(3) },
                random
            );
            a = FloorInspection.Of(car);
            if (a.Damage[0].Form != "sidesway")
                foreach (var x in a.Damage)
                    Console.WriteLine("  side " + i + " " + d.Stations.Count + " " + x);
        }
        return 0;
    }
}
