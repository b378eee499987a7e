using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>A small network in which every kind of reading occurs, with drop errors and a tape of unknown zero and scale.</summary>
internal static class EveryKind
{
    public static Network Of(Random random)
    {
        double Any() => 0.4 * (random.NextDouble() - 0.5);
        NetworkPoint At(string id, double x, double y, double dropSigma = 0) =>
            new(id)
            {
                SketchXMetres = x + Any(),
                SketchYMetres = y + Any(),
                SketchZMetres = 0.3 + Any(),
                DropSigmaMetres = dropSigma,
            };
        NetworkPoint[] points =
        [
            At("A", 0, 0, 0.0005),
            At("B", 2, 0, 0.0005),
            At("C", 0, 2, 0.0005),
            At("D", 2, 2, 0.0007),
            At("E", 1, 3, 0.0005),
            At("M1", 0.7, 0.5, 0.0004),
            At("M2", 1.3, 0.5, 0.0004),
            At("M3", 1, 1.6, 0.0004),
            At("M4", -0.4, 1, 0.0004),
            At("M5", 2.4, 1, 0.0004),
        ];
        const double S = 0.001;
        double L() => 1.5 + Any();
        return new Network(
            points,
            [
                new PlanDistance("plan", "A", "B", L(), S, "tape"),
                new PlanDistance("plan 2", "C", "D", L(), S, "tape"),
                new DirectDistance("direct", "A", "D", L(), S, "tape"),
                new DirectDistance("direct 2", "M1", "M4", L(), S, "tape"),
                new DirectDistance("direct 3", "M2", "M5", L(), S, "tape"),
                new DirectDistance("direct 4", "M3", "E", L(), S, "tape"),
                new Height("height", "A", L(), S, "tape"),
                new Height("floor", "B", L(), S, null, (x, y) => 0.01 * x + 0.02 * y * y),
                new Rise("rise", "B", "D", L(), S, "tape"),
                new Offset("offset", "C", "A", "D", L(), S, "tape"),
                new CoordinatePrior("prior x", "B", Axis.X, 2, S),
                new CoordinatePrior("prior z", "D", Axis.Z, 0.3, S),
                new DropShift("drop", "D", 0.0004, -0.0006),
                new DropDistance("drop 2", "C", 0.0007),
                new MidpointDrop("midpoint", "E", "M1", "M2", S),
                new OffsetDrop("step", "A", "M3", 0.05, -0.02, S),
                new HoleEdgeDrop("edge", "D", "M4", 0.012, 0.7, S),
                new BarDrop("bar", "B", "M4", "M5", 0.1, S),
            ],
            [
                new NetworkTool("tape")
                {
                    ZeroMetres = 0.001,
                    ZeroSigmaMetres = 0.0005,
                    ScaleSigma = 1e-4,
                },
            ]
        );
    }
}
