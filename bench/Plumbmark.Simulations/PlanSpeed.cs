using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Simulations;

/// <summary>Processor time of whole plans and of the next readings, warmed, for frames of 10 to 200 points.</summary>
internal static class PlanSpeed
{
    public static void Run(TextWriter output)
    {
        output.WriteLine("settled to 1/8 in, median of the plans made after warming");
        output.WriteLine($"{"points", 8}{"readings", 10}{"minutes", 9}{"cpu ms", 9}  the plan");
        foreach (var (pairs, times) in new[] { (5, 10), (8, 10), (12, 10), (20, 6), (40, 2), (100, 1) })
        {
            var limit = Length.FromFraction(0, 1, 8, LengthUnit.Inch);
            var car = CarFile.Named("Plan", LengthUnit.Inch) with
            {
                Tools =
                [
                    new Tool("tape", ToolKind.Tape, TapeClass.II, Length.FromFraction(0, 1, 32, LengthUnit.Inch)),
                    new Tool("level", ToolKind.Level, null, Length.FromFraction(0, 1, 32, LengthUnit.Inch), Length.FromMillimetres(0.5m)),
                ],
                Frame = new Plumbmark.Inspection.Car.Frame([.. Ladder(pairs)], new Limits(limit, limit, limit, LimitSource.Own)),
            };
            var plan = FloorPlanner.For(car);
            var durations = new List<double>();
            for (var i = 0; i < times; i++)
            {
                var before = Environment.CpuUsage.TotalTime;
                plan = FloorPlanner.For(car);
                durations.Add((Environment.CpuUsage.TotalTime - before).TotalMilliseconds);
            }

            durations.Sort();
            output.WriteLine(
                $"{2 * pairs, 8}{plan.Readings.Sum(r => r.Times), 10}{plan.Minutes, 9:F0}{durations[times / 2], 9:F0}  {plan.Sentence}"
            );
            output.Flush();
        }
    }

    private static IEnumerable<FramePoint> Ladder(int pairs)
    {
        for (var i = 0; i < pairs; i++)
        {
            var x = Length.FromMillimetres(Math.Round(2600m * i / (pairs - 1)));
            var half = Length.FromMillimetres(300 + (i * 7 % 5 * 30));
            var role = (PointRole)(i % Enum.GetValues<PointRole>().Length);
            foreach (var point in FrameSkeleton.Pair($"{i}", null, role, x, half))
            {
                yield return point;
            }
        }
    }
}
