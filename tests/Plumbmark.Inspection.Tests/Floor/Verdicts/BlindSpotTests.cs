using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Floor.Verdicts;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor.Verdicts;

/// <summary>The smallest damage that would show, of a frame whose places are known to one millimetre each way, independently.</summary>
public class BlindSpotTests
{
    private const double Millimetre = 1e-3;

    private static readonly FrameDesign s_design = new([
        new("A", 1100, 350, 300, PointRole.Suspension),
        new("B", 600, 340, 320, PointRole.Body),
        new("C", 0, 330, 310, PointRole.Spring),
        new("D", -500, 345, 330, PointRole.Body),
        new("E", -1000, 350, 320, PointRole.Suspension),
    ]);

    private static readonly Limits s_limits = new()
    {
        Mirror = Length.FromMillimetres(4),
        Height = Length.FromMillimetres(5),
        Point = Length.FromMillimetres(6),
    };

    // Baarda 1968: δ0 for a test at 5 % either way that notices in 80 of 100 cases is 2.80.
    [Fact]
    public void Noticed_IsBaardasDelta() => Assert.Equal(2.80, FrameBlindSpots.Noticed, 5e-3); // printed to three digits

    // One side against the other is as sure as the checks across and along, whichever of the two is the less sure.
    [Fact]
    public void APoint_ShowsAsFarAsItsPairsChecksAreSure()
    {
        var (sight, checks) = Look(book: false);
        var points = sight.Where(s => s.Form == "point").ToList();
        Assert.Equal(
            "ACE".SelectMany(p => new[] { $"{p}.L plan", $"{p}.L height", $"{p}.R plan", $"{p}.R height" }),
            points.Select(s => $"{s.Point} {s.Direction}")
        );
        double U(string check) => checks.Single(c => c.Id == check).UMetres;
        Assert.All(
            points,
            s =>
            {
                var pair = s.Point![..1];
                var u = s.Direction == "height" ? U($"height-difference:{pair}") : Math.Max(U($"stagger:{pair}"), U($"side-shift:{pair}"));
                Assert.Equal(FrameBlindSpots.Noticed * u, s.SmallestSeenMetres!.Value, 1e-12);
            }
        );
    }

    // With the book a point is held against its own place as well, and the surer of the two counts.
    [Fact]
    public void WithTheBook_APointShowsByTheSurerOfTheTwo()
    {
        var (sight, checks) = Look(book: true);
        double U(params string[] ids) => checks.Where(c => ids.Contains(c.Id)).Min(c => c.UMetres);
        foreach (var s in sight.Where(s => s.Form == "point"))
        {
            var (point, pair) = (s.Point!, s.Point![..1]);
            var u =
                s.Direction == "height"
                    ? U($"height-difference:{pair}", $"deviation-z:{point}")
                    : Math.Max(U($"stagger:{pair}", $"deviation-x:{point}"), U($"side-shift:{pair}", $"deviation-y:{point}"));
            Assert.Equal(FrameBlindSpots.Noticed * u, s.SmallestSeenMetres!.Value, 1e-12);
        }
    }

    // The owner may know one limit only.
    [Theory]
    [InlineData(4, 5, 6, 4, 5)]
    [InlineData(null, null, 6, 6, 6)]
    [InlineData(4, null, null, 4, null)]
    public void APoint_IsHeldAgainstTheLimitOfItsPair_ElseItsOwn(int? mirror, int? height, int? point, int? plan, int? up)
    {
        static Length? Mm(int? value) => value is { } v ? Length.FromMillimetres(v) : null;
        var limits = new Limits
        {
            Mirror = Mm(mirror),
            Height = Mm(height),
            Point = Mm(point),
        };
        var points = Look(book: false, limits: limits)
            .Sight.Where(s => s.Point == "A.L")
            .ToDictionary(s => s.Direction!, s => s.LimitMetres);
        Assert.Equal(plan * Millimetre, points.TryGetValue("plan", out var inPlan) ? inPlan : null);
        Assert.Equal(up * Millimetre, points.TryGetValue("height", out var inHeight) ? inHeight : null);
    }

    [Fact]
    public void AForm_IsHeldAgainstTheLimitOfItsDirection()
    {
        var forms = Look(book: false).Sight.Where(s => s.Point is null).ToList();
        Assert.Equal(["sidesway", "diamond", "mash", "twist", "sag"], forms.Select(s => s.Form));
        Assert.Equal([4, 4, 4, 5, 5], forms.Select(s => Math.Round(s.LimitMetres / Millimetre)));
    }

    // One whole side moved ahead: five staggers, each of u = √2 mm, know it to √2/√5 mm were the centre line's direction given; that is known from the
    // five middles, u = 1/√2 mm each, over a length of two metres, which adds little (own computation).
    [Fact]
    public void Diamond_ShowsByAllPairsTogether() =>
        Assert.InRange(
            Look(book: false).Sight.Single(s => s.Form == "diamond").SmallestSeenMetres!.Value / Millimetre,
            2.80 * Math.Sqrt(2.0 / 5),
            2.80 * Math.Sqrt(2.0 / 5) * 1.3
        );

    // Of sag left against right sees what one rail has and the other has not; what both share only the book can show.
    [Fact]
    public void Sag_HidesAlikeWithoutTheBook()
    {
        var sag = Look(book: false).Sight.Single(s => s.Form == "sag");
        Assert.Equal((null, "alike", BlindSpotWords.SagAlike), (sag.SmallestSeenMetres, sag.Direction, sag.Sentence));
        var known = Look(book: true).Sight.Single(s => s.Form == "sag");
        Assert.Equal((null, BlindSpotWords.Form(DamageForm.Sag)), (known.Direction, known.Sentence));
        Assert.InRange(known.SmallestSeenMetres!.Value / Millimetre, 2.80 * 0.5, 2.80 * 3);
    }

    // Without any height it hides altogether, not only alike.
    [Fact]
    public void WithoutHeights_SagAndTwistHideAltogether()
    {
        foreach (var form in new[] { DamageForm.Sag, DamageForm.Twist })
        {
            var hidden = Look(book: true, heights: false)
                .Sight.Single(s => string.Equals(s.Form, form.ToString(), StringComparison.OrdinalIgnoreCase));
            Assert.Equal((null, null, BlindSpotWords.Form(form)), (hidden.SmallestSeenMetres, hidden.Direction, hidden.Sentence));
        }
    }

    [Fact]
    public void OnePair_ShowsNoFormAtAll()
    {
        FrameDesign one = new([s_design.Stations[0]]);
        Assert.Equal(5, Look(book: false, design: one).Sight.Count(s => s.Point is null && s.SmallestSeenMetres is null));
    }

    // Only one side brought down so far: there is nothing to compare, and that is said of every form.
    [Fact]
    public void NothingToCompare_ShowsNothing()
    {
        var whole = PlacedFrames.Of(new TrueFrame(s_design), 1);
        var left = new MeasuredFrame(whole.Points, [(0, 0), (0, 1)], [1.1, 0.35], new double[2, 2]);
        var contrasts = Contrasts.Of(left);
        Assert.Empty(contrasts.All);
        var sight = FrameBlindSpots.Of(left, contrasts, FrameLie.Of(left, contrasts), s_limits);
        Assert.Equal(5 + 12, sight.Count);
        Assert.All(sight, s => Assert.Null(s.SmallestSeenMetres));
    }

    [Fact]
    public void WithoutALimit_NothingIsCalledBlind()
    {
        var frame = PlacedFrames.Of(new TrueFrame(s_design), 1);
        var contrasts = Contrasts.Of(frame);
        Assert.Empty(FrameBlindSpots.Of(frame, contrasts, FrameLie.Of(frame, contrasts), null));
    }

    private static (IReadOnlyList<BlindSpot> Sight, IReadOnlyList<Check> Checks) Look(
        bool book,
        bool heights = true,
        Limits? limits = null,
        FrameDesign? design = null
    )
    {
        var frame = FramePlacing.InOwnAxes(PlacedFrames.Of(new TrueFrame(design ?? s_design), 1, book: book, heights: heights), []);
        var contrasts = Contrasts.Of(frame);
        var lie = FrameLie.Of(frame, contrasts);
        return (
            FrameBlindSpots.Of(frame, contrasts, lie, limits ?? s_limits),
            [.. FrameChecks.Of(frame, contrasts, lie, limits ?? s_limits, []).Select(c => c.Check)]
        );
    }
}
