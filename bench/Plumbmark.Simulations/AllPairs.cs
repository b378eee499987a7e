using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Simulations;

/// <summary>The thorough person's list: every length between two points once, every height once, every point dropped so often.</summary>
/// <remarks>
/// Compared is one certainty: the largest of 3.29 u over the suspension, spring and steering checks (a sound value is found true nine times in ten) and
/// of 2.80 u over sidesway, diamond, mash, twist and sag where they show least, as the list leaves them. A reading is a reading on both sides: the plan
/// is asked for the fewest, not for the quickest.
/// </remarks>
internal static class AllPairs
{
    private static readonly FloorOptions s_fewest = new() { Minutes = new ReadingMinutes(1, 1, 1, 1, 1) };

    /// <summary>The list against a plan that sees the same damage.</summary>
    internal sealed record Comparison(
        int Points,
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

        /// <summary>What it takes to give every point a place at all, to whatever certainty: 2 n - 3 lengths, a height and a drop of each of n points.</summary>
        public int Placing => (4 * Points) - 3;

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
        var plan = FloorPlanner.For(car, new Limits(limit, limit, limit, LimitSource.Own), s_fewest);
        var milliseconds = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
        if (!plan.IsComplete)
        {
            throw new InvalidOperationException(
                $"The plan does not reach what the list reaches, {limit.Millimetres:F2} mm: {plan.Sentence}"
            );
        }

        var (points, minutes) = (car.Frame.Points.Count, new ReadingMinutes());
        var lengths = points * (points - 1) / 2;
        var dropped = plan.Readings.Where(r => r.Kind == "drop").ToList();
        var drop = dropped.Sum(r => minutes.FirstDrop + ((r.Times - 1) * minutes.Drop));
        return new Comparison(
            points,
            lengths + (points * (1 + drops)),
            plan.Lengths,
            plan.Heights,
            dropped.Sum(r => r.Times),
            (plan.Lengths * minutes.Plan) + (plan.Heights * minutes.Height) + drop,
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
