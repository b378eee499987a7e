using CsCheck;
using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>Heights on some of the points of a plan: a tilt is no free motion of such a network, and a height alone contradicts nothing.</summary>
public class HeightsBesidePlanTests
{
    [Fact]
    public void Solve_OneHeightBesideOneLength_FitsBothExactly()
    {
        NetworkPoint[] points = [Sketched("A", 1, 0), Sketched("B", 0, 0)];
        Observation[] readings = [new Observation.PlanDistance("p", "A", "B", 1.6, 0.001), new Observation.Height("h", "A", 0.3, 0.001)];
        var fit = ((NetworkOutcome.Adjusted)NetworkAdjustment.Solve(new Network(points, readings))).Fit;
        Assert.Equal(0, fit.Redundancy);
        Assert.All(fit.Readings, r => Assert.Equal(0, r.ResidualMetres, 1e-12));
        Assert.Equal([DatumMotion.ShiftX, DatumMotion.ShiftY, DatumMotion.TurnAboutZ], fit.Datum.FreeMotions.Order());
    }

    [Fact]
    public void Solve_HeightsOnAnyOfThePoints_LeaveThePlanAsItIs() =>
        Gen.Select(Gen.Int[0, 15], Gen.Double[-0.5, 0.5].Array[4])
            .Sample(
                (which, heights) =>
                {
                    NetworkPoint[] points = [Sketched("A", 1, 0.5), Sketched("B", 1, -0.5), Sketched("C", 0, 0.5), Sketched("D", 0, -0.5)];
                    (string, string, double)[] lengths =
                    [
                        ("A", "B", 1.001),
                        ("A", "C", 1),
                        ("B", "D", 1),
                        ("C", "D", 1),
                        ("A", "D", 1.414),
                        ("B", "C", 1.414),
                    ];
                    var plan = lengths
                        .Select(l => new Observation.PlanDistance($"{l.Item1}{l.Item2}", l.Item1, l.Item2, l.Item3, 0.001))
                        .ToList();
                    var above = Enumerable
                        .Range(0, 4)
                        .Where(i => (which & (1 << i)) != 0)
                        .Select(i => new Observation.Height($"h{i}", points[i].Id, heights[i], 0.001));
                    var alone = ((NetworkOutcome.Adjusted)NetworkAdjustment.Solve(new Network(points, plan))).Fit;
                    var both = ((NetworkOutcome.Adjusted)NetworkAdjustment.Solve(new Network(points, [.. plan, .. above]))).Fit;
                    Assert.Equal(1, both.Redundancy);
                    foreach (var reading in alone.Readings)
                    {
                        Assert.Equal(reading.ResidualMetres, both.Reading(reading.Id).ResidualMetres, 1e-9);
                    }
                },
                iter: 40
            );

    private static NetworkPoint Sketched(string id, double x, double y) =>
        new(id)
        {
            SketchXMetres = x,
            SketchYMetres = y,
            SketchZMetres = 0,
        };
}
