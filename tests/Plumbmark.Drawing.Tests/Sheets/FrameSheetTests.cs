using System.Diagnostics;
using CsCheck;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Testing;

namespace Plumbmark.Drawing.Sheets;

public sealed class FrameSheetTests
{
    private static readonly SheetOptions s_a4 = new(Paper.A4, new DateOnly(2026, 5, 4), "9.8.7");

    [Fact]
    public void Frame_UsualFrame_IsOnePageWithEverythingOnIt()
    {
        var pdf = PdfText.Of(FrameSheet.Pdf(InventedFrame.Car, InventedFrame.Answer, s_a4));
        Assert.Single(pdf.Pages);
        var answer = InventedFrame.Answer;
        string[] expected =
        [
            "Frame sheet",
            "Larkmoor Tern · serial TN 00417",
            "2026-05-04",
            "out One horn is out; everything from B back agrees.",
            .. answer.Overall.Why,
            answer.Suspects[0].Sentence,
            answer.BlindSpots[0].Sentence,
            answer.Next[0].Sentence,
            "Deviations drawn",
            "right 5/16 ±1/16 out",
            "can't tell yet",
            "Limits: side against side 1/8 in; height 1/8 in (own).",
            "doubted",
            "Plumbmark 9.8.7 · page 1 of 1",
            Cautions.Foot,
            .. Cautions.Frame,
        ];
        Assert.All(expected, e => AssertSays(pdf, e));
        Assert.All(InventedFrame.Car.Readings, r => AssertSays(pdf, ReadingWords.Value(r)));
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Frame_TheDemoCar_IsOneReadablePageWithEveryReading(Paper paper)
    {
        var car = DemoCar.File();
        var answer = FloorInspection.Of(car);
        var pdf = PdfText.Of(FrameSheet.Pdf(car, answer, s_a4 with { Paper = paper }));
        var page = Assert.Single(pdf.Pages);
        // The least that is read without a glass (common practice, no source); the mark within a point's sign is a shape, not a word.
        Assert.All(page.Letters.Where(l => l.Value != "?"), l => Assert.True(l.PointSize >= 6.5, $"{l.Value} {l.PointSize} pt"));
        var cautions = page.GetWords().First(w => w.Text == "Before" && w.Letters[0].PointSize > 8).BoundingBox.Bottom;
        var below = page.Letters.Where(l => l.StartBaseLine.Y < cautions - 2 && l.StartBaseLine.Y > Pages.PageFrame.Bottom).ToList();
        Assert.NotEmpty(below);
        Assert.All(below, l => Assert.True(l.PointSize >= 7.5, $"{l.Value} of a caution has {l.PointSize} pt"));
        var words = pdf.All.Split([' ', '\n']).ToHashSet(StringComparer.Ordinal);
        Assert.All(car.StandingReadings, r => Assert.Contains(r.Id, words));
        Assert.All(Cautions.Frame, c => AssertSays(pdf, c));
        Assert.All(BlindSpotWords.Of(answer.BlindSpots), b => AssertSays(pdf, b));
    }

    // Lines are broken where the column ends: look for the words in order rather than for one line.
    private static void AssertSays(PdfText pdf, string sentence)
    {
        var found = pdf.All.Replace(" ", "", StringComparison.Ordinal);
        if (!found.Contains(sentence.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal))
        {
            // Two columns side by side are read line by line across: then every word must at least be there.
            Assert.All(sentence.Split(' '), word => Assert.Contains(word, pdf.All, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Frame_SameInput_SameBytes() =>
        Assert.Equal(
            FrameSheet.Pdf(InventedFrame.Car, InventedFrame.Answer, s_a4),
            FrameSheet.Pdf(InventedFrame.Car, InventedFrame.Answer, s_a4)
        );

    [Theory]
    // ISO 216: 210 mm by 297 mm; ANSI/ASME Y14.1: Letter 8.5 in by 11 in. 72 points to the inch.
    [InlineData(Paper.A4, 210 / 25.4 * 72, 297 / 25.4 * 72)]
    [InlineData(Paper.Letter, 8.5 * 72, 11 * 72)]
    public void Paper_HasItsPublishedSize(Paper paper, double width, double height)
    {
        var page = PdfText.Of(FrameSheet.Pdf(InventedFrame.Car, InventedFrame.Answer, s_a4 with { Paper = paper })).Pages[0];
        Assert.Equal(width, page.Width, 0.5); // points; a page box is rounded to a few hundredths
        Assert.Equal(height, page.Height, 0.5);
    }

    [Fact]
    public void Frame_TitleDateAndFonts_AreInTheFile()
    {
        var pdf = PdfText.Of(FrameSheet.Pdf(InventedFrame.Car, InventedFrame.Answer, s_a4 with { Author = "T. Invented" }));
        Assert.Equal("Frame sheet: Larkmoor Tern · serial TN 00417", pdf.Title);
        Assert.Equal("T. Invented", pdf.Author);
        Assert.StartsWith("D:20260504", pdf.Created, StringComparison.Ordinal);
        Assert.All(pdf.Pages.SelectMany(p => p.Letters), l => Assert.Contains("Inter", l.FontName, StringComparison.Ordinal));
    }

    [Fact]
    public void Frame_SerialKeptBack_IsNowhereInTheFile()
    {
        var pdf = FrameSheet.Pdf(InventedFrame.Car, InventedFrame.Answer, s_a4 with { ShowsSerial = false });
        Assert.DoesNotContain("00417", PdfText.Of(pdf).All, StringComparison.Ordinal);
        Assert.DoesNotContain("00417", PdfText.Of(pdf).Title, StringComparison.Ordinal);
        Assert.True(string.IsNullOrEmpty(PdfText.Of(pdf).Author));
    }

    [Fact]
    public void Frame_200PointsAnd1500Readings_IsReadyInSecondsOnReadablePages()
    {
        var (car, answer) = InventedFrame.Large();
        Assert.Equal((200, 1500), (car.Frame.Points.Count, car.Readings.Count));
        var watch = Stopwatch.StartNew();
        var bytes = FrameSheet.Pdf(car, answer, s_a4);
        // Less than a second where nothing else runs; the room is for a machine that runs every test at once.
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(10), $"took {watch.Elapsed}");
        var pdf = PdfText.Of(bytes);
        Assert.InRange(pdf.Pages.Count, 3, 12);
        for (var i = 0; i < pdf.Pages.Count; i++)
        {
            Assert.Contains($"page {i + 1} of {pdf.Pages.Count}", PdfText.Words(pdf.Pages[i]), StringComparison.Ordinal);
            // The least that is read without a glass (common practice, no source); the mark within a point's sign is a shape, not a word.
            Assert.DoesNotContain(pdf.Pages[i].Letters, l => l.PointSize < 6.5 && l.Value != "?");
        }

        var words = pdf.All.Split([' ', '\n']).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(car.Readings, r => !words.Contains(r.Id));
        var continued = pdf.Pages.Where(p => PdfText.Words(p).Contains("r700", StringComparison.Ordinal)).ToList();
        Assert.All(continued, p => Assert.Contains("continued", PdfText.Words(p), StringComparison.Ordinal));
    }

    [Fact]
    public void Frame_AnyCar_ShowsEveryReadingThatStands() =>
        CarFiles.Any.Sample(
            car =>
            {
                var pdf = PdfText.Of(FrameSheet.Pdf(car, InventedFrame.Nothing, s_a4));
                Assert.DoesNotContain(car.StandingReadings, r => !pdf.All.Contains(r.Id, StringComparison.Ordinal));
                Assert.Contains("can't tell yet", pdf.All, StringComparison.Ordinal);
                Assert.DoesNotContain(pdf.Pages.SelectMany(p => p.Letters), l => IsOutside(l, pdf.Pages[0]));
            },
            iter: 8
        );

    private static bool IsOutside(UglyToad.PdfPig.Content.Letter letter, UglyToad.PdfPig.Content.Page page) =>
        letter.StartBaseLine.X < 0
        || letter.EndBaseLine.X > page.Width + 1
        || letter.StartBaseLine.Y < 0
        || letter.StartBaseLine.Y > page.Height;

    [Fact]
    public void Frame_NameInAnyScript_IsPrintedOrMarked()
    {
        var car = InventedFrame.Car with { Car = new CarIdentity("Żółw Ωmega 漢") };
        var pdf = PdfText.Of(FrameSheet.Pdf(car, InventedFrame.Answer, s_a4));
        Assert.Contains("Żółw Ωmega \u25A1", pdf.All, StringComparison.Ordinal);
    }
}
