using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Checks;
using Plumbmark.Inspection.Book.Nominals;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Inspection.Tests.Book;

/// <summary>The invented book: two misprints, two types of lever. What it was made from is the truth it is judged by.</summary>
public class DemoBookTests
{
    private static BookPage FramePage => DemoBook.Pages()[0];

    [Fact]
    public void Check_PointsOutBothMisprintsWithTheirSlips_AndNothingElse()
    {
        var findings = BookChecks.Of(FramePage).ToList();
        var chain = Assert.Single(findings, f => f.Kind == FindingKind.ChainDoesNotClose);
        var slip = Assert.Single(chain.Slips);
        Assert.Equal((DemoBook.MisprintInChain, "26", SlipKind.LookAlikeDigit), (slip.Dimension, slip.Likely.AsTyped, slip.Kind));
        var diagonal = Assert.Single(findings, f => f.Kind == FindingKind.DoesNotFit);
        Assert.Equal([DemoBook.MisprintInDiagonal], diagonal.Dimensions);
        Assert.Equal(("51.86", SlipKind.DigitsSwapped), (Assert.Single(diagonal.Slips).Likely.AsTyped, diagonal.Slips[0].Kind));
        Assert.Equal(2, findings.Count);
    }

    [Fact]
    public void Check_OnceBothAreCorrected_FindsNothing()
    {
        var page = FramePage;
        foreach (var (id, value) in new[] { (DemoBook.MisprintInChain, "26"), (DemoBook.MisprintInDiagonal, "51.86") })
        {
            page = page.With(page.Dimension(id)! with { Status = new FigureStatus.Corrected(BookSamples.Amount(value), "does not close") });
        }

        Assert.Empty(BookChecks.Of(page));
    }

    [Fact]
    public void Check_OfTheLevers_FindsNeitherGapNorOverlap() => Assert.Empty(BookChecks.Of(DemoBook.Pages()[1]));

    [Theory]
    [InlineData("QD 0899", "early lever", "1.42")]
    [InlineData("qd899 L", "early lever", "1.42")]
    [InlineData("QD 0900", "late lever", "1.20")]
    [InlineData("QD 1047", "late lever", "1.20")]
    public void ForCar_ChoosesTheLeverByTheSerialNumber(string serial, string variant, string pad)
    {
        var answer = PadOf(serial);
        var figure = Assert.IsType<FigureChoice.Applies>(answer.Choice).Figure;
        Assert.Equal(variant, ((BookSubject.OfPart)figure.Dimension.Subject).Variant);
        Assert.Equal(pad, AmountText.Write(figure.Dimension.Used!));
        Assert.NotEqual(variant, ((BookSubject.OfPart)Assert.Single(answer.ForOthers).Dimension.Subject).Variant);
        Assert.Equal("Dipper workshop book (invented), 2nd edition, page 61", figure.Source.ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("QE 0900")]
    [InlineData("see plate")]
    public void ForCar_ANumberThatCannotBeCompared_IsNotGuessed(string? serial) =>
        Assert.Equal(2, Assert.IsType<FigureChoice.CannotTell>(PadOf(serial).Choice).Figures.Count);

    [Fact]
    public void Variants_ForTheBench_CarryFigureToleranceAndSource()
    {
        var late = Assert.Single(BookVariants.Of(DemoBook.Pages(), "QD 1047"), v => v.Name == "late lever");
        Assert.Equal(PartKind.SteeringLever, late.Kind);
        Assert.True(late.IsFittedTo(SerialNumber.Read("QD 1047")));
        var pad = late.Figure("pad-height")!;
        Assert.Equal(("1.20", "0.015", LimitSource.Factory), (AmountText.Write(pad.Nominal), AmountText.Write(pad.Tolerance!), pad.Source));
        Assert.Contains("page 61", pad.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Nominals_ComeOutWhereTheDrawingBoardHadThem_OnceTheMisprintsAreCorrected()
    {
        var car = DemoCar.File();
        var page = car.Book.Page("frame")!;
        page = page.With(
            page.Dimension(DemoBook.MisprintInChain)! with
            {
                Status = new FigureStatus.Corrected(BookSamples.Amount("26"), "6 for 9"),
            }
        );
        page = page.With(page.Dimension(DemoBook.MisprintInDiagonal)! with { Status = new FigureStatus.Doubted("does not fit") });
        var nominals = NominalsFromBook.Of(car with { Book = car.Book with { Pages = [page] } });
        Assert.Empty(nominals.Missing);
        foreach (var station in DemoFrame.Stations)
        {
            var left = nominals.Points.Single(p => p.Point == $"{station.Name}.L");
            // A.L is the zero along the car; the drawing has it at 114 in.
            Assert.Equal(station.XInches - 114, left.Place.X!.Value.Inches, 0.02); // figures are printed to 0.01 in
            Assert.Equal(station.HalfWidthInches, left.Place.Y!.Value.Inches, 0.02);
            Assert.Equal(station.ZInches, left.Place.Z!.Value.Inches, 0.02);
            Assert.StartsWith("Dipper workshop book (invented), 2nd edition, page 12: ", left.Source, StringComparison.Ordinal);
        }

        var filled = nominals.Fill(car.Frame).ToList();
        Assert.Equal(16, filled.Count);
        Assert.All(filled, p => Assert.Contains("page 12", p.NominalSource, StringComparison.Ordinal));
    }

    private static SubjectAnswer PadOf(string? serial) =>
        BookForCar.Of(DemoBook.Pages(), serial, []).Subjects.Single(s => s.Subject is BookSubject.OfPart { Dimension: "pad-height" });
}
