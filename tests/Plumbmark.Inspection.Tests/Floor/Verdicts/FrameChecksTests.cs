using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor.Verdicts;

/// <summary>Every check of a frame whose true shape is known: which there are, their sign and size, their limit, and whether the frame needs them.</summary>
public class FrameChecksTests
{
    private static readonly FrameDesign s_design = new([
        new("A", 1100, 350, 300, PointRole.Other),
        new("B", 600, 340, 320, PointRole.Suspension),
        new("C", 0, 330, 310, PointRole.Body),
        new("D", -500, 345, 330, PointRole.Spring),
        new("E", -1000, 350, 320, PointRole.Body),
    ]);

    private static readonly Limits s_limits = new()
    {
        Mirror = Length.FromMillimetres(4),
        Height = Length.FromMillimetres(5),
        Point = Length.FromMillimetres(6),
    };

    [Fact]
    public void WithoutTheBook_EachPairIsHeldAgainstItself_ThenTheWhole()
    {
        var answer = Answer(new TrueFrame(s_design), book: false, s_limits);
        string[] words = ["side-shift", "stagger", "height-difference", "width"];
        var expected = "ABCDE"
            .SelectMany(p => words.Select(w => $"{w}:{p}"))
            .Where(id => !id.StartsWith("width", StringComparison.Ordinal));
        Assert.Equal(
            [.. expected, "twist"],
            answer.Checks.Select(c => c.Id).Where(id => !id.StartsWith("width", StringComparison.Ordinal))
        );
        foreach (var check in answer.Checks)
        {
            Assert.Equal(check.Kind is "heightDifference" or "twist" ? 5e-3 : 4e-3, check.LimitMetres);
            Assert.Equal(check.Kind == "twist" || check.Id[^1] is 'B' or 'D', check.MustBeTrue);
            Assert.Equal(check.Kind == "twist" ? ["B.L", "B.R", "D.L", "D.R"] : [$"{check.Id[^1]}.L", $"{check.Id[^1]}.R"], check.Points);
            Assert.InRange(check.ValueMetres, -4 * check.UMetres, 4 * check.UMetres);
        }
    }

    // Left ahead, left higher, middle to the left are positive; the twist is the front's height difference less the rear's (own definitions, glossary).
    [Theory]
    [InlineData("stagger:B", 6, 0, 0, 6)]
    [InlineData("stagger:B", -6, 0, 0, -6)]
    [InlineData("side-shift:B", 0, 8, 0, 4)]
    [InlineData("height-difference:B", 0, 0, 7, 7)]
    public void AMovedPoint_IsSeenWithItsSign(string id, double dx, double dy, double dz, double expected) =>
        Near(expected, Answer(new TrueFrame(s_design).Bend("B.L", dx, dy, dz), book: false, s_limits), id);

    // From the first to the last pair that the wheels hang on: 1100 mm of the 2100 mm over which the frame is twisted by 9 mm.
    [Fact]
    public void Twist_IsTheFrontAgainstTheRear() =>
        Near(9 * 1100 / 2100.0, Answer(new TrueFrame(s_design).Twist(9), book: false, s_limits), "twist");

    [Fact]
    public void WithTheBook_SagAndEveryPointAreHeldAgainstIt()
    {
        var answer = Answer(new TrueFrame(s_design).Sag(2, 8, isLeft: true), book: true, s_limits);
        Near(8 - (8 * ((500 * 500 / 1100.0) + (600 * 500 / 1000.0)) / 1100), answer, "sag:L"); // C against the line from B to D
        Near(0, answer, "sag:R");
        foreach (var check in answer.Checks.Where(c => c.Kind is "sag" or "deviation"))
        {
            Assert.Equal(check.Kind == "sag" ? 5e-3 : 6e-3, check.LimitMetres);
            Assert.Equal(
                check.Kind == "sag"
                    || check.Id.Contains(":B", StringComparison.Ordinal)
                    || check.Id.Contains(":D", StringComparison.Ordinal),
                check.MustBeTrue
            );
        }

        var sagged = answer.Checks.Single(c => c.Id == "sag:L");
        Assert.Equal(["B.L", "C.L", "D.L"], sagged.Points);
        Assert.Equal(30, answer.Checks.Count(c => c.Kind == "deviation"));
        Near(-8, answer, "deviation-z:C.L");
        foreach (var width in "ABCDE".Select(p => answer.Checks.Single(c => c.Id == $"width:{p}")))
        {
            Assert.Equal((4e-3, width.Id[^1] is 'B' or 'D'), (width.LimitMetres, width.MustBeTrue));
            Near(0, answer, width.Id);
        }
    }

    // A rail that stands up in the middle sags by less than nothing; its ends, which lie on the line, do not count.
    [Fact]
    public void ARailThatRises_HasANegativeSag() =>
        Near(
            -8 + (8 * ((500 * 500 / 1100.0) + (600 * 500 / 1000.0)) / 1100),
            Answer(new TrueFrame(s_design).Sag(2, -8, isLeft: true), book: true, s_limits),
            "sag:L"
        );

    [Theory]
    [InlineData("deviation-x:B.L", 7, 0, 0, 7)]
    [InlineData("deviation-y:B.L", 0, -7, 0, -7)]
    [InlineData("deviation-z:B.L", 0, 0, 7, 7)]
    public void WithTheBook_APointIsOffByWhatItMoved(string id, double dx, double dy, double dz, double expected) =>
        Near(expected, Answer(new TrueFrame(s_design).Bend("B.L", dx, dy, dz), book: true, s_limits), id);

    [Fact]
    public void WithoutALimit_ThereIsAValueAndNoVerdict()
    {
        var answer = Answer(new TrueFrame(s_design), book: false, limits: null);
        Assert.NotEmpty(answer.Checks);
        Assert.All(answer.Checks, c => Assert.Null(c.LimitMetres));
        Assert.All(answer.Checks, c => Assert.Null(c.Verdict));
        Assert.Empty(answer.BlindSpots);
        Assert.Equal(Verdict.CannotTellYet, answer.Overall.Verdict);
    }

    // A form that is claimed is held against its limit as well: a diamond against that for left and right, a twist against that for heights.
    [Fact]
    public void AClaimedForm_IsACheckToo()
    {
        var diamond = Answer(new TrueFrame(s_design).Diamond(9), book: false, s_limits).Checks.Single(c => c.Id == "damage:diamond");
        Assert.Equal((4e-3, true), (diamond.LimitMetres, diamond.MustBeTrue));
        var twist = Answer(new TrueFrame(s_design).Twist(12), book: false, s_limits).Checks.Single(c => c.Id == "damage:twist");
        Assert.Equal((5e-3, true), (twist.LimitMetres, twist.MustBeTrue));
    }

    // By the book it is one point; by symmetry one of a pair, and one of the two moved by half at least.
    [Theory]
    [InlineData("B.L", true)]
    [InlineData("C.L", false)]
    public void AClaimedPoint_IsHeldAgainstTheLimitForPoints(string id, bool mustBeTrue)
    {
        var bent = new TrueFrame(s_design).Bend(id, 0, 16, 0);
        var point = Answer(bent, book: true, s_limits).Checks.Single(c => c.Id == $"damage:{id}");
        Assert.Equal((6e-3, mustBeTrue, "point"), (point.LimitMetres, point.MustBeTrue, point.Kind));
        Assert.Equal([id], point.Points);
        Assert.InRange(1e3 * point.ValueMetres, 15.5, 16.5);

        var bySymmetry = Answer(bent, book: false, s_limits);
        var pair = bySymmetry.Checks.Single(c => c.Kind == "pair");
        Assert.Equal(($"damage:{id[0]}", 6e-3, mustBeTrue), (pair.Id, pair.LimitMetres, pair.MustBeTrue));
        Assert.Equal([$"{id[0]}.L", $"{id[0]}.R"], pair.Points);
        var told = bySymmetry.Damage.Single(d => d.Form == "pair");
        Assert.InRange(1e3 * told.AmountMetres, 15, 17);
        Assert.Equal((told.AmountMetres / 2, told.UMetres / 2), (pair.ValueMetres, pair.UMetres));
    }

    // The twist is told between the outermost pairs of which either side carries a wheel, a spring or the steering.
    [Fact]
    public void APairMatters_WhenEitherOfItsPointsDoes()
    {
        var car = Measured(new TrueFrame(s_design), book: false, s_limits);
        var oneSided = car with
        {
            Frame = car.Frame with
            {
                Points = [.. car.Frame.Points.Select(p => p.Id is "B.L" or "D.R" ? p with { Role = PointRole.Body } : p)],
            },
        };
        var twist = FloorInspection.Of(oneSided, new FloorOptions { NextReadings = 0 }).Checks.Single(c => c.Id == "twist");
        Assert.Equal(["B.L", "B.R", "D.L", "D.R"], twist.Points);
    }

    [Fact]
    public void ALimit_ComesWithItsSource()
    {
        var limits = s_limits with { Height = null, Source = LimitSource.Factory };
        var checks = Answer(new TrueFrame(s_design), book: false, limits).Checks;
        Assert.All(checks, c => Assert.Equal(c.LimitMetres is null ? null : LimitSource.Factory, c.LimitSource));
        Assert.Contains(checks, c => c.LimitMetres is null);
        Assert.Contains(checks, c => c.LimitMetres is not null);
    }

    // δ0(5 %, 80 %) = 2.80 standard uncertainties (Baarda 1968): what is sure to a twentieth of a millimetre hides nothing near the limit, and
    // without heights nobody sees a twist, a sag or the height of a point.
    [Fact]
    public void BlindSpots_AreWhatNoReadingTouches()
    {
        Assert.Equal(["sag"], Answer(new TrueFrame(s_design), book: false, s_limits).BlindSpots.Select(b => b.Form));
        Assert.Empty(Answer(new TrueFrame(s_design), book: true, s_limits).BlindSpots);
        var flat = Answer(new TrueFrame(s_design), book: false, s_limits, heights: false).BlindSpots;
        Assert.Equal(["twist", "sag", "point", "point", "point", "point"], flat.Select(b => b.Form));
        Assert.Equal(["B.L", "B.R", "D.L", "D.R"], flat.Where(b => b.Form == "point").Select(b => b.Point));
        Assert.All(flat.Where(b => b.Form == "point"), b => Assert.Equal("height", b.Direction));
        Assert.All(flat, b => Assert.Equal(5e-3, b.LimitMetres));
        Assert.All(flat, b => Assert.Null(b.SmallestSeenMetres));
    }

    private static void Near(double millimetres, FloorAnswer answer, string id)
    {
        var check = answer.Checks.Single(c => c.Id == id);
        Assert.InRange(1e3 * check.ValueMetres, millimetres - 0.35, millimetres + 0.35);
    }

    private static FloorAnswer Answer(TrueFrame frame, bool book, Limits? limits, bool heights = true) =>
        FloorInspection.Of(Measured(frame, book, limits, heights), new FloorOptions { NextReadings = 0 });

    // Everything to a twentieth of a millimetre.
    private static CarFile Measured(TrueFrame frame, bool book, Limits? limits, bool heights = true)
    {
        var style = new SurveyStyle
        {
            DropSigma = 0.05,
            EndSigma = 0.05,
            Division = 0.05,
            LevelSigma = 0.05,
            Book = book,
            Heights = heights,
        };
        var car = SimulatedSurvey.Measure(frame, style, new Random(5));
        return car with { Frame = car.Frame with { Limits = limits } };
    }
}
