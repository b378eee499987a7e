using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Simulations;

/// <summary>The thorough person's list: every length between two points once, every height once, every point dropped twice.</summary>
internal static class AllPairs
{
    /// <summary>How many readings the list has, and how many a plan needs to see the same damage.</summary>
    public static (int All, int Planned) Against(CarFile car)
    {
        var full = car with { Readings = [.. Readings(car)] };
        var seen = FloorInspection.Of(full, new FloorOptions { NextReadings = 0 }).Sight.Max(s => s.SmallestSeenMetres!.Value);

        // A plan settles a sound frame at 3.29 u below the limit; damage is seen at 2.80 u: the same certainty is a limit this much larger.
        var limit = Length.FromMillimetres((decimal)(seen * 1000 * 3.2897 / 2.8016));
        var plan = FloorPlanner.For(car, new Limits(limit, limit, limit, LimitSource.Own));
        var drops = plan.Readings.Where(r => r.Kind == "drop").Sum(r => r.Times);
        return (full.Readings.Count + car.Frame.Points.Count, plan.Lengths + plan.Heights + drops);
    }

    private static IEnumerable<Reading> Readings(CarFile car)
    {
        var points = car.Frame.Points;
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = i + 1; j < points.Count; j++)
            {
                yield return new Reading.Plan($"p{i}-{j}", points[i].Id, points[j].Id, Plan(points[i], points[j])) { Tool = "tape" };
            }

            yield return new Reading.Height($"h{i}", points[i].Id, Length.FromMillimetres(300)) { Tool = "level" };
            yield return new Reading.Drop($"d{i}", points[i].Id, null, Length.Zero, Length.Zero);
        }
    }

    private static Length Plan(FramePoint a, FramePoint b) =>
        Length.FromMillimetres(
            (decimal)
                Math.Round(
                    1000
                        * double.Hypot(
                            a.Sketch!.X!.Value.Metres - b.Sketch!.X!.Value.Metres,
                            a.Sketch.Y!.Value.Metres - b.Sketch.Y!.Value.Metres
                        ),
                    3
                )
        );
}
