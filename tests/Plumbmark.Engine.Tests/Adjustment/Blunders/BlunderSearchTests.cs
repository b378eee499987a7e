using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Lengths;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment.Blunders;

/// <summary>One slip in an honest survey, each kind in turn. How often over many surveys: bench/results/blunders.txt.</summary>
public class BlunderSearchTests
{
    private const double Sigma = 0.0008;
    private const double DropSigma = 0.0005;

    private static readonly List<Frames.Truth> s_truth = Frames.Ladder(5, new Random(3));

    private static List<Observation> Honest(Random random) =>
        [.. Frames.PlanLengths(s_truth, Sigma, 1.7, random), .. Frames.Heights(s_truth, Sigma, random)];

    private static NetworkFit Fit(IEnumerable<Observation> readings) =>
        Assert
            .IsType<NetworkOutcome.Adjusted>(
                NetworkAdjustment.Solve(new Network(Frames.Sketched(s_truth, dropSigma: DropSigma), readings, null, Frames.Pairs(s_truth)))
            )
            .Fit;

    private static Doubted Named(IEnumerable<Observation> readings, BlunderHints? hints = null) =>
        Assert.Single(Assert.IsType<BlunderOutcome.Named>(BlunderSearch.Of(Fit(readings), hints)).Best.Doubted);

    private static List<Observation> With(Func<Observation, Observation> slip, string id, int seed = 5)
    {
        var readings = Honest(new Random(seed));
        var index = readings.FindIndex(r => r.Id == id);
        readings[index] = slip(readings[index]);
        return readings;
    }

    private static string PlanId(int seed = 5) => Honest(new Random(seed)).OfType<PlanDistance>().Skip(9).First().Id;

    [Fact]
    public void HonestReadings_NobodyIsDoubted()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            Assert.IsType<BlunderOutcome.NothingDoubted>(BlunderSearch.Of(Fit(Honest(new Random(seed)))));
        }
    }

    [Theory]
    [InlineData(BlunderKind.OneInch, 0.0254)]
    [InlineData(BlunderKind.OneInch, -0.0254)]
    [InlineData(BlunderKind.TenInches, 0.254)]
    [InlineData(BlunderKind.OneFoot, -0.3048)]
    [InlineData(BlunderKind.HundredMillimetres, 0.1)]
    [InlineData(BlunderKind.TenMillimetres, -0.01)]
    [InlineData(BlunderKind.FreeAmount, 0.0371)]
    public void OneReadingOff_IsNamedWithItsAmount(BlunderKind kind, double metres)
    {
        var id = PlanId();
        var doubted = Named(With(o => o with { ValueMetres = o.ValueMetres + metres }, id));
        Assert.Equal((id, kind), (doubted.ReadingId, doubted.Kind));

        // Observed − believed; a free amount is only as sure as the reading.
        Assert.Equal(metres, doubted.SizeMetres, kind == BlunderKind.FreeAmount ? 4 * Sigma : 1e-12);
    }

    [Fact]
    public void SwappedDigits_AreNamedFromTheTextAsTyped()
    {
        var id = PlanId();
        var honest = Length.FromMillimetres(Math.Round((decimal)(Honest(new Random(5)).Single(o => o.Id == id).ValueMetres * 1000)));
        var text = honest.ToString().Replace(" mm", "", StringComparison.Ordinal);
        var swapped = LengthText.Read($"{text[0]}{text[2]}{text[1]}{text[3..]}", LengthUnit.Millimetre).Match(l => l, _ => default);
        var readings = With(o => o with { ValueMetres = swapped.Metres }, id);
        var hints = new BlunderHints
        {
            Meanings =
            [
                .. LengthSlips
                    .Of(swapped)
                    .Select(s => new Alternative(s.Kind, readings.Single(o => o.Id == id) with { ValueMetres = s.Believed.Metres })),
            ],
        };
        var doubted = Named(readings, hints);
        Assert.Equal((id, BlunderKind.DigitsSwapped), (doubted.ReadingId, doubted.Kind));
        Assert.Equal(honest.Metres, doubted.Believed!.ValueMetres, 1e-9);
    }

    [Fact]
    public void LeftForRightAtOneEnd_IsNamedWithThePointsMeant()
    {
        var meant = Honest(new Random(5)).OfType<PlanDistance>().First(o => o is { From: "A.L", To: "C.L" });
        var entered = meant with { To = "C.R" };
        var readings = Honest(new Random(5));
        readings.RemoveAll(o => o is PlanDistance { From: "A.L", To: "C.R" });
        readings[readings.IndexOf(meant)] = entered;
        var doubted = Named(readings);
        Assert.Equal((meant.Id, BlunderKind.SidesSwapped), (doubted.ReadingId, doubted.Kind));
        Assert.Equal("C.L", Assert.IsType<PlanDistance>(doubted.Believed).To);
    }

    [Fact]
    public void TwoRowsExchanged_AreNamedTogether()
    {
        var readings = Honest(new Random(5));
        var (a, b) = (
            readings.FindIndex(o => o is PlanDistance { From: "A.L", To: "B.R" }),
            readings.FindIndex(o => o is PlanDistance { From: "B.L", To: "C.L" })
        );
        (readings[a], readings[b]) = (
            readings[a] with
            {
                ValueMetres = readings[b].ValueMetres,
            },
            readings[b] with
            {
                ValueMetres = readings[a].ValueMetres,
            }
        );
        var best = Assert.IsType<BlunderOutcome.Named>(BlunderSearch.Of(Fit(readings))).Best;
        Assert.Equal(
            new[] { readings[a].Id, readings[b].Id }.Order(StringComparer.Ordinal),
            best.Doubted.Select(d => d.ReadingId!).Order(StringComparer.Ordinal)
        );
        Assert.All(best.Doubted, d => Assert.Equal(BlunderKind.RowsSwapped, d.Kind));
    }

    [Fact]
    public void TwoReadingsOffAtOnce_AreBothNamed()
    {
        var readings = Honest(new Random(8));
        var plans = readings.OfType<PlanDistance>().ToList();
        var (a, b) = (plans[4], plans[17]);
        readings[readings.IndexOf(a)] = a with { ValueMetres = a.ValueMetres + 0.0254 };
        readings[readings.IndexOf(b)] = b with { ValueMetres = b.ValueMetres - 0.1 };
        var best = Assert.IsType<BlunderOutcome.Named>(BlunderSearch.Of(Fit(readings))).Best;
        Assert.Equal(
            [(a.Id, BlunderKind.OneInch), (b.Id, BlunderKind.HundredMillimetres)],
            best.Doubted.Select(d => (d.ReadingId!, d.Kind)).OrderBy(d => d.Item2)
        );
    }

    [Fact]
    public void PlanEnteredAsDirect_IsNamed()
    {
        // A tower half a metre above the rails: point to point and plan differ by a hand's breadth.
        var truth = s_truth.Select(p => p.Id == "A.L" ? p with { Z = p.Z + 0.5 } : p).ToList();
        List<Observation> readings =
        [
            .. Frames.PlanLengths(truth, Sigma, 1.7, new Random(1)),
            .. Frames.Heights(truth, Sigma, new Random(2)),
        ];
        var index = readings.FindIndex(o => o is PlanDistance { From: "A.L", To: "B.R" });
        var direct = Frames.DirectLengths(truth, Sigma, 1.7, new Random(4)).Single(o => o is { From: "A.L", To: "B.R" });
        readings[index] = readings[index] with { ValueMetres = direct.ValueMetres };
        var doubted = Named(readings);
        Assert.Equal((readings[index].Id, BlunderKind.PlanDirectConfused), (doubted.ReadingId, doubted.Kind));
        Assert.IsType<DirectDistance>(doubted.Believed);
    }

    [Fact]
    public void EdgeOfAHoleOfKnownDiameter_IsNamed()
    {
        var id = PlanId();
        const double Diameter = 0.0317;
        var point = Assert.IsType<PlanDistance>(Honest(new Random(5)).Single(o => o.Id == id)).From;
        var hints = new BlunderHints { HoleDiametersMetres = new Dictionary<string, double> { [point] = Diameter } };
        var doubted = Named(With(o => o with { ValueMetres = o.ValueMetres - Diameter / 2 }, id), hints);
        Assert.Equal((id, BlunderKind.HalfHole), (doubted.ReadingId, doubted.Kind));
    }

    [Fact]
    public void AnOffsetWithTheWrongSign_IsNamed()
    {
        var readings = Honest(new Random(5));
        var (p, from, to) = (s_truth[2], s_truth[0], s_truth[8]);
        var d = double.Hypot(to.X - from.X, to.Y - from.Y);
        var h = ((to.X - from.X) * (p.Y - from.Y) - (to.Y - from.Y) * (p.X - from.X)) / d;
        readings.Add(new Offset("offset", p.Id, from.Id, to.Id, -h, Sigma));
        var doubted = Named(readings);
        Assert.Equal(("offset", BlunderKind.TwiceOffset), (doubted.ReadingId, doubted.Kind));
        Assert.Equal(-2 * h, doubted.SizeMetres, 1e-9);
    }

    [Fact]
    public void ABadDropWherePlanAndDirectMeet_ThePointIsNamed()
    {
        var moved = s_truth.Select(p => p.Id == "C.L" ? p with { X = p.X + 0.006, Y = p.Y - 0.004 } : p).ToList();
        List<Observation> readings =
        [
            .. Frames.PlanLengths(moved, Sigma, 1.7, new Random(1)),
            .. Frames.DirectLengths(s_truth, Sigma, 1.7, new Random(2)),
            .. Frames.Heights(s_truth, Sigma, new Random(3)),
        ];
        var doubted = Named(readings);
        Assert.Equal(("C.L", BlunderKind.PointOff), (doubted.Point, doubted.Kind));
        Assert.Equal(double.Hypot(0.006, 0.004), doubted.SizeMetres, 0.002);
    }

    [Fact]
    public void ADropThatWentAstrayAmongThree_IsNamed_AndAmongTwoNobodyCanSay()
    {
        DropShift[] three = [new("d1", "C.L", 0.0004, 0.0002), new("d2", "C.L", 0.0110, -0.0003)];
        Assert.Equal("d2", Named([.. Honest(new Random(5)), .. three]).ReadingId);
        DropShift[] first = [new("d1", "C.L", 0.0104, 0.0002), new("d2", "C.L", 0.0110, -0.0003)];
        Assert.Equal("C.L", Named([.. Honest(new Random(5)), .. first]).Point);
        var two = Assert.IsType<BlunderOutcome.ProvableNotLocatable>(BlunderSearch.Of(Fit([.. Honest(new Random(5)), three[1]])));
        Assert.Equal(2, two.Candidates.Count);
    }

    [Fact]
    public void AFixedPlaceThatIsWrong_IsNamedAmongThree()
    {
        NetworkPoint Held(Frames.Truth p, double error = 0) =>
            new(p.Id)
            {
                X = new Coordinate.Fixed(p.X + error),
                Y = new Coordinate.Fixed(p.Y),
                Z = new Coordinate.Fixed(p.Z),
            };
        var held = new[] { s_truth[0], s_truth[1], s_truth[8], s_truth[9] };
        var points = s_truth.Select(p =>
            held.Contains(p) ? Held(p, p == s_truth[8] ? 0.02 : 0) : new NetworkPoint(p.Id) { SketchXMetres = p.X, SketchYMetres = p.Y }
        );
        var fit = Assert
            .IsType<NetworkOutcome.Adjusted>(
                NetworkAdjustment.Solve(new Network(points, Frames.PlanLengths(s_truth, Sigma, 1.7, new Random(1))))
            )
            .Fit;
        var doubted = Assert.Single(Assert.IsType<BlunderOutcome.Named>(BlunderSearch.Of(fit)).Best.Doubted);
        Assert.Equal((s_truth[8].Id, BlunderKind.PointOff), (doubted.Point, doubted.Kind));
        Assert.Equal(0.02, doubted.SizeMetres, 0.003);
    }

    // Ghilani, Adjustment Computations, 5th ed., 2010, example 14.5: one redundancy, |w| = 13.6 for all five.
    [Fact]
    public void OneRedundancy_ProvesAGrossErrorAndAccusesNobody()
    {
        NetworkPoint Held(string id, double x, double y) => new(id) { X = new Coordinate.Fixed(x), Y = new Coordinate.Fixed(y) };
        (string, string, double)[] lengths =
        [
            ("Badger", "Wisconsin", 5870.302),
            ("Badger", "Campus", 7297.588),
            ("Wisconsin", "Campus", 3616.434),
            ("Wisconsin", "Bucky", 5742.878),
            ("Campus", "Bucky", 5123.760),
        ];
        var network = new Network(
            [
                Held("Badger", 2_410_000.000, 390_000.000),
                Held("Bucky", 2_411_820.000, 386_881.222),
                new("Wisconsin") { SketchXMetres = 2_415_776, SketchYMetres = 391_043 },
                new("Campus") { SketchXMetres = 2_416_892, SketchYMetres = 387_603 },
            ],
            lengths.Select(l => new PlanDistance($"{l.Item1}-{l.Item2}", l.Item1, l.Item2, l.Item3, 0.01))
        );
        var outcome = BlunderSearch.Of(Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit);
        Assert.Equal(
            5,
            Assert
                .IsType<BlunderOutcome.ProvableNotLocatable>(outcome)
                .Candidates.SelectMany(c => c.Doubted)
                .Select(d => d.ReadingId)
                .Distinct()
                .Count()
        );
    }

    [Fact]
    public void SigmasHalfOfWhatTheyShouldBe_IsUnexplainedOrQuiet_NeverNamed()
    {
        for (var seed = 0; seed < 10; seed++)
        {
            var readings = Honest(new Random(seed)).Select(o => o with { SigmaMetres = o.SigmaMetres / 2 });
            var outcome = BlunderSearch.Of(Fit(readings));
            Assert.True(outcome is not BlunderOutcome.Named, $"{seed}: {outcome}");
        }
    }

    [Fact]
    public void SingleSlips_AgreeWithSolvingAfresh_WhereTheErrorIsSmall()
    {
        // A centimetre moves no point by more than a few millimetres.
        var truth = Frames.Ladder(7, new Random(21));
        List<Observation> readings = [.. Frames.PlanLengths(truth, 0.0008, 1.7, new Random(22))];
        readings[9] = readings[9] with { ValueMetres = readings[9].ValueMetres + 0.01 };
        var fit = Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(new Network(Frames.Sketched(truth), readings))).Fit;
        var slips = SingleSlips.Of(fit);
        var best = slips.MaxBy(s => s.LogOdds)!;
        Assert.Equal((readings[9].Id, BlunderKind.TenMillimetres), (best.Doubted.ReadingId, best.Doubted.Kind));

        // What the rest says of the reading, by a fit without it.
        var without = Assert
            .IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(new Network(Frames.Sketched(truth), readings.Where((_, i) => i != 9))))
            .Fit;
        var held = new Prediction(without).Of(readings[9])!;
        var free = slips.Single(s => s.Doubted.ReadingId == readings[9].Id && s.Doubted.Kind == BlunderKind.FreeAmount);
        Assert.Equal(held.Difference, free.Doubted.SizeMetres, 2e-5);
        Assert.All(readings, r => Assert.Contains(slips, s => s.Doubted.ReadingId == r.Id && s.Doubted.Kind == BlunderKind.OneInch));
    }
}
