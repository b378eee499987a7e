using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Simulations;

/// <summary>The thorough person's list: every length between two points once, every height once, every point dropped so often.</summary>
internal static class AllPairs
{
    /// <summary>The list against a plan that sees the same damage.</summary>
    internal sealed record Comparison(
        int List,
        int Lengths,
        int Heights,
        int Drops,
        double Minutes,
        double ListMinutes,
        double Milliseconds
    )
    {
        public int Planned => Lengths + Heights + Drops;

        public double Share => (double)Planned / List;
    }

    /// <summary>How many readings the list has, and what a plan needs to see the same damage.</summary>
    public static Comparison Against(CarFile car, int drops)
    {
        var full = car with { Readings = [.. Readings(car, drops)] };
        var answer = FloorInspection.Of(full, new FloorOptions { NextReadings = 0 });

        // What a plan settles: of a check that must be true 3.29 u stay below the limit, of a form of damage the smallest amount seen. A thousandth
        // more, so that no reading is asked for only because a factor is rounded: the list itself must be a plan that settles this.
        var checks = answer.Checks.Where(c => c.MustBeTrue).Max(c => 3.2897 * c.UMetres);
        var forms = answer.Sight.Where(s => s.Point is null).Max(s => s.SmallestSeenMetres ?? 0);
        var limit = Length.FromMillimetres((decimal)(1001 * Math.Max(checks, forms)));
        var before = Environment.CpuUsage.TotalTime;
        var plan = FloorPlanner.For(car, new Limits(limit, limit, limit, LimitSource.Own));
        var milliseconds = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
        if (!plan.IsComplete)
        {
            throw new InvalidOperationException(
                $"The plan does not reach what the list reaches, {limit.Millimetres:F2} mm: {plan.Sentence}"
            );
        }

        var (points, minutes) = (car.Frame.Points.Count, new ReadingMinutes());
        var lengths = points * (points - 1) / 2;
        return new Comparison(
            lengths + (points * (1 + drops)),
            plan.Lengths,
            plan.Heights,
            plan.Readings.Where(r => r.Kind == "drop").Sum(r => r.Times),
            plan.Minutes,
            (lengths * minutes.Plan) + (points * (minutes.Height + minutes.FirstDrop + ((drops - 1) * minutes.Drop))),
            milliseconds
        );
    }

    private static IEnumerable<Reading> Readings(CarFile car, int drops)
    {
        var points = car.Frame.Points;
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = i + 1; j < points.Count; j++)
            {
                yield return new Reading.Plan($"p{i}-{j}", points[i].Id, points[j].Id, Plan(points[i], points[j])) { Tool = "tape" };
            }

            yield return new Reading.Height($"h{i}", points[i].Id, Length.FromMillimetres(300)) { Tool = "level" };
            for (var again = 1; again < drops; again++)
            {
                // Half a millimetre either way, so that the repeats tell no other spread than the usual.
                var step = Length.FromMillimetres((i + again) % 2 == 0 ? 0.7m : -0.7m);
                yield return new Reading.Drop($"d{i}-{again}", points[i].Id, null, step, -step);
            }
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
