using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Checks;
using static Plumbmark.Inspection.Tests.Book.BookSamples;

namespace Plumbmark.Inspection.Tests.Book;

public class BookChecksTests
{
    [Theory]
    [InlineData("10 1/8", "12 3/8", "22 1/2", null)] // closes
    [InlineData("10 1/8", "12 3/16", "22 15/16", "b: 12 3/16 printed for 12 13/16, the fraction counted from its other end")]
    [InlineData("10 1/8", "128", "22 1/4", "b: 128 printed for 12 1/8, a scan made 8 of 1/8")]
    [InlineData("19", "12", "28", "a: 19 printed for 16, one digit taken for another that looks like it")]
    [InlineData("10.25", "12.94", "22.74", "b: 12.94 printed for 12.49, two digits changed places")]
    [InlineData("10 3/8", "12", "22 3/16", "a: 10 3/8 printed for 10 3/16, the fraction in another division")]
    [InlineData("10 3/8", "12 1/8", "21 1/2", "c: 21 1/2 printed for 22 1/2 in, a whole step too many or too few")]
    public void Chain_ThatDoesNotClose_IsPointedOutWithItsLikelySlip(string a, string b, string total, string? slip)
    {
        var page = Page(
            Between("a", "A", "B", a, LengthSense.Along),
            Between("b", "B", "C", b, LengthSense.Along),
            Between("c", "A", "C", total, LengthSense.Along)
        );
        var findings = BookChecks.Of(page);
        if (slip is null)
        {
            Assert.Empty(findings);
            return;
        }

        var finding = Assert.Single(findings);
        Assert.Equal(FindingKind.ChainDoesNotClose, finding.Kind);
        Assert.Contains(slip, finding.Slips.Select(s => s.Words));
        Assert.Equal(["a", "b", "c"], finding.Dimensions.Order());
    }

    [Fact]
    public void Chain_OfTheDrawing_IsAddedUpWhateverItRunsAlong()
    {
        var page = Page(Named("t", "24"), Named("u", "11 3/4"), Named("v", "12")) with { Chains = [new BookChain("t", ["u", "v"])] };
        Assert.Contains("u and v make it 23 3/4 in: 1/4 in apart", Assert.Single(BookChecks.Of(page)).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("33.13", "841.4 mm", false)]
    [InlineData("33 1/8", "841 mm", false)]
    [InlineData("33 1/8", "814 mm", true)]
    [InlineData("38 1/8", "841 mm", true)]
    public void Columns_ThatDisagreeBeyondTheirRounding_ArePointedOut(string inches, string millimetres, bool wrong)
    {
        var page = Page(Between("a", "A", "B", inches) with { AlsoPrinted = Amount(millimetres) });
        Assert.Equal(wrong, BookChecks.Of(page).Any(f => f.Kind == FindingKind.ColumnsDisagree && f.Slips.Count > 0));
    }

    [Fact]
    public void Sides_GivenDifferently_ArePointedOut_UnlessBuiltSo()
    {
        var (left, right) = (Between("l", "A.L", "B.L", "30 1/2"), Between("r", "B.R", "A.R", "30 1/8"));
        Assert.Equal(FindingKind.SidesDiffer, Assert.Single(BookChecks.Of(Page(left, right))).Kind);
        Assert.Empty(BookChecks.Of(Page(left, right with { IsHanded = true })));
        Assert.Empty(BookChecks.Of(Page(left, right with { Value = Amount("30.5") })));
    }

    [Fact]
    public void MustBeEqual_WithoutAFigure_IsNoContradiction_WithTwoItMayBe()
    {
        var (a, b) = (Between("a", "A.L", "C.R", "50") with { MustEqual = ["b"], IsHanded = true }, Between("b", "A.R", "C.L", null));
        Assert.Empty(BookChecks.Of(Page(a, b)));
        Assert.Equal(FindingKind.NotEqual, Assert.Single(BookChecks.Of(Page(a, b with { Value = Amount("50 1/2") }))).Kind);
    }

    [Fact]
    public void Triangle_ThatCannotBe_IsPointedOut()
    {
        var finding = Assert.Single(
            BookChecks.Of(Page(Between("a", "A", "B", "10"), Between("b", "B", "C", "12"), Between("c", "A", "C", "28")))
        );
        Assert.Equal(FindingKind.NoTriangle, finding.Kind);
        Assert.Contains("together reach only 22 in", finding.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("60.30", false)] // √(60² + 6²) = 60.299; job's example of 6 in over 60 in
    [InlineData("60.03", true)]
    [InlineData("59.70", true)]
    public void PlanAndDirect_MustGoTogetherWithTheHeights(string direct, bool wrong)
    {
        var page = Page(
            Between("p", "A", "B", "60.00"),
            Between("d", "A", "B", direct, LengthSense.Direct),
            At("ha", "A", "10.00", Ordinate.Height),
            At("hb", "B", "16.00", Ordinate.Height)
        );
        Assert.Equal(wrong, BookChecks.Of(page).Any(f => f.Kind == FindingKind.PlanAgainstDirect));
    }

    [Fact]
    public void LengthOfUnsaidSense_IsRemarkedOnlyWhereItMatters()
    {
        BookPage With(string height) =>
            Page(
                Between("p", "A", "B", "60", LengthSense.Unsaid),
                At("ha", "A", "10", Ordinate.Height),
                At("hb", "B", height, Ordinate.Height)
            );
        var remark = Assert.Single(BookChecks.Of(With("16")));
        Assert.Equal((FindingKind.SenseUnsaid, false), (remark.Kind, remark.IsContradiction));
        Assert.Empty(BookChecks.Of(With("10 1/2")));
    }

    [Fact]
    public void WholePage_ALengthPointToPointAmongPlanLengths_IsFoundOut()
    {
        // A rectangle 60 by 30 whose rear is 15 in higher: the diagonal is printed point to point (68.74) and called plan (67.08).
        var page = Page(
            Between("side", "A.L", "B.L", "60.00") with
            {
                IsBothSides = true,
            },
            Between("front", "A.L", "A.R", "30.00"),
            Between("rear", "B.L", "B.R", "30.00"),
            Between("diagonal", "A.L", "B.R", "68.74") with
            {
                IsBothSides = true,
            },
            At("ha", "A.L", "10.00", Ordinate.Height) with
            {
                IsBothSides = true,
            },
            At("hb", "B.L", "25.00", Ordinate.Height) with
            {
                IsBothSides = true,
            }
        );
        var finding = Assert.Single(BookChecks.Of(page), f => f.Kind == FindingKind.DoesNotFit);
        Assert.Contains(finding.Slips, s => s.Dimension == "diagonal" && s.Kind == SlipKind.PlanForDirect);
    }

    [Theory]
    [InlineData("QD 1199", "QD 1200", 0)]
    [InlineData("QD 1199", "QD 1210", 1)]
    [InlineData("QD 1199", "QD 1150", 1)]
    public void Variants_WhoseRangesGapOrOverlap_ArePointedOut(string to, string from, int findings)
    {
        var page = Page(
            Between("a", "A", "B", "10") with
            {
                AppliesTo = Serials(null, to),
            },
            Between("b", "A", "B", "11") with
            {
                AppliesTo = Serials(from, null),
            }
        );
        Assert.Equal(findings, BookChecks.Of(page).Count);
    }

    [Fact]
    public void DoubtedFigure_IsLeftOut()
    {
        var page = Page(
            Between("a", "A", "B", "10"),
            Between("b", "B", "C", "12"),
            Between("c", "A", "C", "28") with
            {
                Status = new FigureStatus.Doubted("?"),
            }
        );
        Assert.Empty(BookChecks.Of(page));
    }

    private static BookDimension Named(string id, string value) => new(id, new BookSubject.Named(id)) { Value = Amount(value) };
}
