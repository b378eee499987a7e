using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Inspection.Road;
using Plumbmark.Testing;

namespace Plumbmark.Drawing.Sheets;

public sealed class OtherSheetTests
{
    private static readonly SheetOptions s_options = new(Paper.A4, new DateOnly(2026, 5, 4), "9.8.7");

    [Fact]
    public void Workshop_NamesOnlyWhatToMoveAndFromWhere()
    {
        var pdf = PdfText.Of(WorkshopSheet.Pdf(InventedFrame.Car, InventedFrame.Answer, s_options));
        Assert.Single(pdf.Pages);
        Assert.Contains("5/8 in to the left", pdf.All, StringComparison.Ordinal);
        Assert.Contains("Measure from", pdf.All, StringComparison.Ordinal);
        Assert.Contains("the readings name this point as the bent one", pdf.All, StringComparison.Ordinal);
        // A doubted reading is a reason to wait; what to measure next is not the shop's business.
        Assert.Contains("A reading is doubted.", pdf.All, StringComparison.Ordinal);
        var sure = PdfText.Of(WorkshopSheet.Pdf(InventedFrame.Car, InventedFrame.Answer with { Suspects = [] }, s_options));
        Assert.DoesNotContain("doubted", sure.All, StringComparison.Ordinal);
        Assert.DoesNotContain("measure next", pdf.All, StringComparison.Ordinal);
    }

    [Fact]
    public void Workshop_NothingOut_SaysSoWithoutCallingTheFrameTrue()
    {
        var pdf = PdfText.Of(WorkshopSheet.Pdf(InventedFrame.Car, InventedFrame.Nothing, s_options));
        Assert.Contains("Nothing to move", pdf.All, StringComparison.Ordinal);
        Assert.Contains("No check is surely out.", pdf.All, StringComparison.Ordinal);
        Assert.DoesNotContain("within its limit.", pdf.All, StringComparison.Ordinal);
    }

    [Fact]
    public void BeforeAfter_RealChange_IsToldApartFromNoiseOnOnePage()
    {
        var answer = InventedFrame.Answer;
        var repaired = answer with { Pairs = [.. answer.Pairs.Select(p => p.Left == "A.L" ? p with { SideShiftMetres = 0.0002 } : p)] };
        var pdf = PdfText.Of(BeforeAfterSheet.Pdf(InventedFrame.Car, answer, InventedFrame.Car, repaired, s_options));
        Assert.Single(pdf.Pages);
        Assert.Contains("Of 32 values compared, one really changed", pdf.All, StringComparison.Ordinal);
        Assert.Contains("−5/16", pdf.All, StringComparison.Ordinal);
        Assert.Contains("What could be noise", pdf.All, StringComparison.Ordinal);
    }

    [Fact]
    public void Form_HasEveryLineWithItsNumberAndBoxesForFractions()
    {
        var round = MeasuringRound.Usual(InventedFrame.Car);
        var pdf = PdfText.Of(BlankForm.Pdf(InventedFrame.Car, round, s_options));
        var words = pdf.All.Split([' ', '\n']).ToHashSet(StringComparer.Ordinal);
        Assert.All(round, l => Assert.Contains($"{l.Number}", words));
        Assert.Contains("fraction", words);
        Assert.Contains("Stands rated for the load", pdf.All, StringComparison.Ordinal);
        var metric = PdfText.Of(BlankForm.Pdf(InventedFrame.Car with { Units = LengthUnit.Millimetre }, round, s_options));
        Assert.DoesNotContain("fraction", metric.All.Split([' ', '\n']));
        Assert.Contains("millimetres", metric.All, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_OfTheDemo_SayWhatToDoAndWhoseLimit()
    {
        var car = DemoCar.File();
        var answer = BenchInspection.Of(car);
        var pdf = PdfText.Of(PartsSheet.Pdf(car, answer, s_options));
        foreach (var part in answer.Parts)
        {
            Assert.Contains(
                $"{PartWords.Title(part.Part)}: {DispositionWord.For(part.Disposition)}",
                pdf.All,
                StringComparison.OrdinalIgnoreCase
            );
        }

        Assert.Contains("(practice)", pdf.All, StringComparison.Ordinal);
        Assert.Contains("Evidence, not proof.", pdf.All, StringComparison.Ordinal);
        Assert.Contains("No dimension shows a crack", pdf.All, StringComparison.Ordinal);
        Assert.Equal(PartsSheet.Pdf(car, answer, s_options), PartsSheet.Pdf(car, answer, s_options));
    }

    [Fact]
    public void Press_RecordsEveryBiteAndCrackTest()
    {
        var car = CarFileReader
            .Read(PressJobSamples.LowerArmAfter(3).Utf8())
            .Match(c => c, f => throw new InvalidOperationException(string.Join('\n', f)));
        var pdf = PdfText.Of(PressSheet.Pdf(car, s_options));
        Assert.Contains("left lower arm, front half", pdf.All, StringComparison.Ordinal);
        Assert.All(car.Press[0].Bites, b => Assert.Contains(b.Id, pdf.All, StringComparison.Ordinal));
        Assert.Contains("0.08 in stayed, 0.14 in sprang back.", pdf.All, StringComparison.Ordinal);
        Assert.Contains("Dye penetrant, before the first bite: nothing found, which does not prove", pdf.All, StringComparison.Ordinal);
        Assert.Contains("No heat, ever", pdf.All, StringComparison.Ordinal);
        Assert.Contains(
            "No part has been in the press.",
            PdfText.Of(PressSheet.Pdf(car with { Press = [] }, s_options)).All,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(DemoRoad.Fault.None)]
    [InlineData(DemoRoad.Fault.BentMount)]
    public void Road_OfTheDemo_HasEveryFigureWithItsVerdict(DemoRoad.Fault fault)
    {
        var car = DemoRoad.Car(fault);
        var answer = RoadInspection.Of(car);
        var pdf = PdfText.Of(RoadSheet.Pdf(car, answer, s_options));
        var words = pdf.All.Replace(" ", "", StringComparison.Ordinal);
        Assert.Contains(answer.Headline.Replace(" ", "", StringComparison.Ordinal), words, StringComparison.Ordinal);
        var display = RoadDisplay.Of(car);
        Assert.All(answer.Figures, f => Assert.Contains(display.Said(f.Kind, f.Value), pdf.All, StringComparison.Ordinal));
        Assert.Contains(VerdictWord.For(answer.Verdict), pdf.All, StringComparison.Ordinal);
        Assert.All(answer.Cautions, c => Assert.Contains(c.Split(' ')[0], pdf.All, StringComparison.Ordinal));
        Assert.Equal(RoadSheet.Pdf(car, answer, s_options), RoadSheet.Pdf(car, answer, s_options));
    }

    [Fact]
    public void EverySheet_SameInput_SameBytes()
    {
        var (car, answer) = (InventedFrame.Car, InventedFrame.Answer);
        Func<byte[]>[] sheets =
        [
            () => WorkshopSheet.Pdf(car, answer, s_options),
            () => BeforeAfterSheet.Pdf(car, InventedFrame.Nothing, car, answer, s_options),
            () => BlankForm.Pdf(car, MeasuringRound.Usual(car), s_options),
        ];
        Assert.All(sheets, s => Assert.Equal(s(), s()));
    }

    // What every sheet must say, and what none may: the product never declares anything safe or roadworthy.
    [Fact]
    public void EverySheet_CarriesTheCautionAndNoClearance()
    {
        var (car, answer) = (InventedFrame.Car, InventedFrame.Answer);
        var fine = answer with { Overall = new OverallAnswer(Verdict.True, "Every check is true and nothing is hidden.", [], []) };
        byte[][] sheets =
        [
            FrameSheet.Pdf(car, fine, s_options),
            WorkshopSheet.Pdf(car, fine, s_options),
            BeforeAfterSheet.Pdf(car, answer, car, fine, s_options),
            BlankForm.Pdf(car, MeasuringRound.Usual(car), s_options),
        ];
        foreach (var sheet in sheets)
        {
            var pdf = PdfText.Of(sheet);
            Assert.All(pdf.Pages, p => Assert.Contains(Cautions.Foot, PdfText.Words(p), StringComparison.Ordinal));
            Assert.DoesNotMatch(@"(?<!Whether a car )\b(is|are) (safe|roadworthy)\b", pdf.All);
        }
    }
}
