using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor.Forms;

public class FormComparisonTests
{
    private const double Amount = 6.35; // twice the usual limit of 1/8 in, millimetres

    private static readonly FrameDesign s_design = new([
        new("A", 1000, 340, 300, PointRole.Suspension),
        new("B", 600, 350, 300, PointRole.Suspension),
        new("C", 200, 360, 300, PointRole.Body),
        new("D", -200, 365, 300, PointRole.Body),
        new("E", -600, 370, 300, PointRole.Spring),
        new("F", -1000, 380, 300, PointRole.Spring),
    ]);

    private static IReadOnlyList<DamageExplanation> Explain(TrueFrame frame, bool book = false, int seed = 3)
    {
        var placed = FramePlacing.InOwnAxes(PlacedFrames.Of(frame, 0.5, new Random(seed), book), []);
        return FormComparison.Of(placed, Contrasts.Of(placed));
    }

    private static DamagePart OnlyPart(TrueFrame frame, bool book = false)
    {
        var explanations = Explain(frame, book);
        Assert.True(DamageReport.IsClaimed(explanations));
        return Assert.Single(explanations[0].Parts);
    }

    private static void AmountIs(double expected, DamagePart part) =>
        Assert.InRange(expected, (part.AmountMetres - (3 * part.UMetres)) * 1000, (part.AmountMetres + (3 * part.UMetres)) * 1000);

    [Fact]
    public void Nothing_IsClaimedOfASoundFrame() =>
        Assert.All(Enumerable.Range(0, 20), seed => Assert.False(DamageReport.IsClaimed(Explain(new TrueFrame(s_design), seed: seed))));

    [Theory]
    [InlineData(1, false)]
    [InlineData(1, true)]
    [InlineData(2, true)]
    public void Sidesway_IsNamedWithTheShiftOfTheOutermostStation(int lastMoved, bool grows)
    {
        var part = OnlyPart(new TrueFrame(s_design).Sidesway(lastMoved, -Amount, grows));
        Assert.Equal(DamageForm.Sidesway, part.Form);
        AmountIs(-Amount, part);
    }

    [Fact]
    public void Diamond_IsNamedWithHowFarTheLeftRailIsAhead()
    {
        var part = OnlyPart(new TrueFrame(s_design).Diamond(Amount));
        Assert.Equal(DamageForm.Diamond, part.Form);
        AmountIs(Amount, part);
    }

    [Fact]
    public void Mash_IsNamedWithTheSideThatIsShort()
    {
        var part = OnlyPart(new TrueFrame(s_design).Mash(1, isLeft: false, Amount));
        Assert.Equal((DamageForm.Mash, "B"), (part.Form, part.From));
        AmountIs(Amount, part);
    }

    [Fact]
    public void Twist_IsNamedWithFrontLessRear()
    {
        var part = OnlyPart(new TrueFrame(s_design).Twist(-Amount));
        Assert.Equal(DamageForm.Twist, part.Form);
        AmountIs(-Amount, part);
    }

    [Theory]
    [InlineData(true, false)] // one rail: symmetry shows it
    [InlineData(null, true)] // both rails: only the book can
    public void Sag_IsNamedWithItsDepth(bool? isLeft, bool book)
    {
        var part = OnlyPart(new TrueFrame(s_design).Sag(2, Amount, isLeft), book);
        Assert.Equal(DamageForm.Sag, part.Form);
        AmountIs(Amount, part);
    }

    [Fact]
    public void SagOfBothRails_IsInvisibleWithoutTheBook() =>
        Assert.False(DamageReport.IsClaimed(Explain(new TrueFrame(s_design).Sag(2, Amount, null))));

    [Fact]
    public void OneBentMount_IsAPairBySymmetry_AndAPointByTheBook()
    {
        var bent = new TrueFrame(s_design).Bend("C.R", 2, Amount, -3);
        var length = Math.Sqrt(4 + (Amount * Amount) + 9);
        var bySymmetry = OnlyPart(bent);
        Assert.Equal(("C", true), (bySymmetry.From, bySymmetry.IsPair));
        AmountIs(length, bySymmetry);
        var byBook = OnlyPart(bent, book: true);
        Assert.Equal(("C.R", false), (byBook.From, byBook.IsPair));
        AmountIs(length, byBook);
    }

    [Fact]
    public void TwoAtOnce_AreBothNamed()
    {
        var explanations = Explain(new TrueFrame(s_design).Twist(Amount).Diamond(-Amount));
        Assert.Equal(
            [DamageForm.Diamond, DamageForm.Twist],
            explanations[0].Parts.Select(p => p.Form).Order().ToArray().Reverse().OrderByDescending(f => f == DamageForm.Diamond)
        );
        AmountIs(-Amount, explanations[0].Parts.Single(p => p.Form == DamageForm.Diamond));
        AmountIs(Amount, explanations[0].Parts.Single(p => p.Form == DamageForm.Twist));
    }

    [Fact]
    public void AStretchedTape_IsALookAlike_AndNoDamage()
    {
        var stretched = new TrueFrame(s_design).Move((_, at) => (at.X * 0.004, at.Y * 0.004, 0));
        var part = OnlyPart(stretched, book: true);
        Assert.True(DamageReport.IsLookAlike(part));
        Assert.Equal(0.004, part.AmountMetres, 0.0005); // a share, not a length
    }

    [Fact]
    public void PlumbAndLevelAtOdds_MakeHighPointsLean_AndIsALookAlike()
    {
        var towers = new FrameDesign([.. s_design.Stations.Select((s, i) => s with { Z = i % 2 == 0 ? 300 : 600 })]);
        var leaning = new TrueFrame(towers).Move((_, at) => (0, 0.02 * (at.Z - 450), 0));
        Assert.Equal(DamageForm.Lean, OnlyPart(leaning).Form);
    }
}
