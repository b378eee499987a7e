using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>What readings leave open is an answer with names in it.</summary>
public class NetworkDefectTests
{
    private const double Sigma = 0.001;

    private static NetworkOutcome.Loose Loose(Network network) => Assert.IsType<NetworkOutcome.Loose>(NetworkAdjustment.Solve(network));

    private static NetworkPoint At(string id, double x, double y) => new(id) { SketchXMetres = x, SketchYMetres = y };

    private static PlanDistance Between(NetworkPoint a, NetworkPoint b) =>
        new(
            $"{a.Id}-{b.Id}",
            a.Id,
            b.Id,
            double.Hypot(a.SketchXMetres!.Value - b.SketchXMetres!.Value, a.SketchYMetres!.Value - b.SketchYMetres!.Value),
            Sigma
        );

    private static readonly NetworkPoint s_a = At("A", 0, 0);
    private static readonly NetworkPoint s_b = At("B", 1, 0.1);
    private static readonly NetworkPoint s_c = At("C", 0.4, 1.1);
    private static readonly NetworkPoint s_d = At("D", 1.2, 1.0);
    private static readonly NetworkPoint s_e = At("E", 3, 0.2);
    private static readonly NetworkPoint s_f = At("F", 3.4, 1.2);

    private static readonly PlanDistance[] s_braced =
    [
        Between(s_a, s_b),
        Between(s_a, s_c),
        Between(s_b, s_c),
        Between(s_a, s_d),
        Between(s_b, s_d),
        Between(s_c, s_d),
    ];

    [Fact]
    public void OneLengthToAPoint_ItSwings_AndOneMoreLengthTiesIt()
    {
        var loose = Loose(new Network([s_a, s_b, s_c, s_d, s_e], [.. s_braced, Between(s_b, s_e)]));
        Assert.Equal([new FloatingPoint("E", InPlan: true, InHeight: false)], loose.Defect.Floating);
        Assert.Equal(1, loose.Defect.MissingReadings);
        var tie = Assert.IsType<Tie.Plan>(Assert.Single(loose.Defect.Ties));
        Assert.Contains("E", (string[])[tie.From, tie.To]);
        Assert.Null(loose.Fit.Point("E").XMetres);
        Assert.NotNull(loose.Fit.Point("A").XMetres);

        // What is tied is as sure as without the loose point.
        var alone = Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(new Network([s_a, s_b, s_c, s_d], s_braced))).Fit;
        foreach (var point in (string[])["A", "B", "C", "D"])
        {
            Assert.Equal(alone.Point(point).UxMetres!.Value, loose.Fit.Point(point).UxMetres!.Value, 1e-9);
            Assert.Equal(alone.Point(point).UyMetres!.Value, loose.Fit.Point(point).UyMetres!.Value, 1e-9);
        }

        Assert.Equal(alone.Redundancy, loose.Fit.Redundancy);
    }

    [Fact]
    public void TwoPointsHangTogether_AreOneGroup_AndThreeReadingsTieThem()
    {
        var loose = Loose(new Network([s_a, s_b, s_c, s_d, s_e, s_f], [.. s_braced, Between(s_e, s_f)]));
        Assert.Equal(["E", "F"], loose.Defect.Floating.Select(f => f.Point));
        Assert.Equal(["E", "F"], Assert.Single(loose.Defect.Groups));
        Assert.Equal(3, loose.Defect.MissingReadings);
        Assert.Equal(3, loose.Defect.Ties.Count);

        // Taking the readings named does tie them.
        var more = loose.Defect.Ties.Cast<Tie.Plan>().Select(t => Between(Find(t.From), Find(t.To)) with { Id = $"more {t.From}-{t.To}" });
        Assert.IsType<NetworkOutcome.Adjusted>(
            NetworkAdjustment.Solve(new Network([s_a, s_b, s_c, s_d, s_e, s_f], [.. s_braced, Between(s_e, s_f), .. more]))
        );
    }

    private static NetworkPoint Find(string id) => ((NetworkPoint[])[s_a, s_b, s_c, s_d, s_e, s_f]).Single(p => p.Id == id);

    [Fact]
    public void AFixedFrameAndAClusterApart_TheClusterFloats()
    {
        NetworkPoint[] held =
        [
            s_a with
            {
                X = new Coordinate.Fixed(0),
                Y = new Coordinate.Fixed(0),
            },
            s_b with
            {
                X = new Coordinate.Fixed(1),
                Y = new Coordinate.Fixed(0.1),
            },
        ];
        var apart = Between(s_e, s_f);
        var loose = Loose(new Network([.. held, s_c, s_e, s_f], [Between(s_a, s_c), Between(s_b, s_c), apart]));
        Assert.Equal(["E", "F"], loose.Defect.Floating.Select(f => f.Point));
        Assert.Empty(loose.Fit.Datum.FreeMotions);
        Assert.Equal(0.4, loose.Fit.Point("C").XMetres!.Value, 9);
    }

    [Fact]
    public void HeightsInTwoPieces_ThePieceWithoutReferenceFloats()
    {
        var network = new Network(
            [new("A"), new("B"), new("C"), new("D")],
            [new Height("1", "A", 0.3, Sigma), new Rise("2", "A", "B", 0.1, Sigma), new Rise("3", "C", "D", 0.1, Sigma)]
        );
        var loose = Loose(network);
        Assert.Equal([new FloatingPoint("C", false, true), new FloatingPoint("D", false, true)], loose.Defect.Floating);
        Assert.Equal(1, loose.Defect.MissingReadings);
        Assert.IsType<Tie.Height>(Assert.Single(loose.Defect.Ties));
    }

    [Fact]
    public void AFlatFigureReadDirectly_LeavesHeightsOpenAndPlanDetermined()
    {
        NetworkPoint Held(string id, double x, double y) =>
            new(id)
            {
                X = new Coordinate.Fixed(x),
                Y = new Coordinate.Fixed(y),
                Z = new Coordinate.Fixed(0),
            };
        var p = new NetworkPoint("P")
        {
            SketchXMetres = 170.71,
            SketchYMetres = 170.71,
            SketchZMetres = 0,
        };
        var loose = Loose(
            new Network(
                [Held("1", 170.71, 270.71), Held("2", 100, 100), Held("3", 241.42, 100), p],
                [
                    new DirectDistance("a", "1", "P", 100.01, 0.01),
                    new DirectDistance("b", "2", "P", 100.02, 0.01),
                    new DirectDistance("c", "3", "P", 100.03, 0.01),
                ]
            )
        );
        Assert.Equal([new FloatingPoint("P", false, true)], loose.Defect.Floating);

        // Strang and Borre 1997, example 10.1: the plan is the book's.
        Assert.Equal(170.7029, loose.Fit.Point("P").XMetres!.Value, 0.00005);
        Assert.Equal(170.7234, loose.Fit.Point("P").YMetres!.Value, 0.00005);
    }

    [Fact]
    public void PointsInOneLine_AnAnswerWithoutNaN()
    {
        NetworkPoint[] points = [At("A", 0, 0), At("B", 1, 0), At("C", 2, 0)];
        var outcome = NetworkAdjustment.Solve(
            new Network(points, [Between(points[0], points[1]), Between(points[1], points[2]), Between(points[0], points[2])])
        );
        Assert.NotNull(outcome.FitOrNull);
        Assert.All(outcome.FitOrNull.Readings, r => Assert.Equal(0, r.ResidualMetres, 1e-6));
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e6)]
    public void OneSigmaVeryFarFromTheOthers_AnAnswerWithoutNaN(double sigma)
    {
        PlanDistance[] readings = [.. s_braced.Select((o, i) => i == 2 ? o with { SigmaMetres = sigma } : o)];
        var fit = Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(new Network([s_a, s_b, s_c, s_d], readings))).Fit;
        Assert.All(fit.Points, p => Assert.True(p.UxMetres is > 0 and < 0.01 && p.UyMetres is > 0 and < 0.01, $"{p}"));
    }

    [Fact]
    public void FaultsComeAllAtOnce()
    {
        var refused = Assert.IsType<NetworkOutcome.Refused>(
            NetworkAdjustment.Solve(
                new Network(
                    [s_a, s_b, s_a],
                    [
                        new PlanDistance("1", "A", "Z", 1, Sigma),
                        new PlanDistance("2", "A", "A", 1, Sigma),
                        new PlanDistance("3", "A", "B", double.NaN, 0, "tape"),
                    ]
                )
            )
        );
        Assert.Equal(
            [
                new NetworkFault.DuplicateName("A"),
                new NetworkFault.UnknownPoint("1", "Z"),
                new NetworkFault.SamePointTwice("2", "A"),
                new NetworkFault.UnknownTool("3", "tape"),
                new NetworkFault.SigmaNotAllowed("3", 0),
                new NetworkFault.ValueNotAllowed("3", double.NaN),
            ],
            refused.Faults
        );
    }

    [Fact]
    public void NoReadingAtAll_IsRefused() =>
        Assert.Equal(
            [new NetworkFault.NothingToFit()],
            Assert.IsType<NetworkOutcome.Refused>(NetworkAdjustment.Solve(new Network([s_a], []))).Faults
        );
}
