using Plumbmark.Drawing.Sheets.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

namespace Plumbmark.Drawing.Sheets;

/// <summary>What holds for every sheet of every car on both papers.</summary>
public sealed class EverySheetTests
{
    // Read without a glass on a bench: 7 pt and more (common practice, no source); signs inside the marks of points are no text.
    private const double LeastPoints = 7;

    // A frame sheet is to stay on one page: the least that is read without a glass at arm's length (common practice, no source).
    private const double LeastPointsOfOnePage = 6.5;

    public static TheoryData<string, Paper> All { get; } =
    [.. EverySheet.Cars.Select(c => (c, Paper.A4)), ("demo", Paper.Letter), ("long names", Paper.Letter)];

    [Theory]
    [MemberData(nameof(All))]
    public void Sheet_IsReadable(string car, Paper paper)
    {
        var (file, answer) = EverySheet.Car(car);
        var options = new SheetOptions(paper, new DateOnly(2026, 5, 4), "9.8.7");
        foreach (var (kind, bytes) in EverySheet.Of(file, answer, options))
        {
            using var document = PdfDocument.Open(bytes);
            foreach (var page in document.GetPages())
            {
                AssertReadable(page, $"{kind} of {car}, page {page.Number}");
            }

            Assert.Equal("en-GB", LanguageOf(document));
            Assert.True(document.GetPages().Sum(p => p.Letters.Count) > 200, kind);
        }
    }

    private static string? LanguageOf(PdfDocument document) =>
        document.Structure.Catalog.CatalogDictionary.TryGet(NameToken.Create("Lang"), out StringToken language) ? language.Data : null;

    private static void AssertReadable(Page page, string where)
    {
        foreach (var letter in page.Letters)
        {
            Assert.True(
                letter.PointSize >= (where.StartsWith("frame", StringComparison.Ordinal) ? LeastPointsOfOnePage : LeastPoints)
                    || letter.Value is "?",
                $"\"{letter.Value}\" has {letter.PointSize} pt: {where}"
            );
            Assert.True(
                letter.StartBaseLine.X >= PageFrame.Beside - 1
                    && letter.EndBaseLine.X <= page.Width - PageFrame.Beside + 1
                    && letter.StartBaseLine.Y >= PageFrame.Beside - 1
                    && letter.StartBaseLine.Y <= page.Height - PageFrame.Top,
                $"\"{letter.Value}\" stands outside: {where}"
            );
        }

        // Head and foot alone make no page.
        var text = page.Letters.Count(l => l.StartBaseLine.Y is > PageFrame.Bottom + 2 && l.StartBaseLine.Y < page.Height - 75);
        Assert.True(text > 40, $"hardly anything on it: {where}");
    }

    [Fact]
    public void Cautions_AreAsLargeAsTheRestAndDark()
    {
        Assert.True(PageType.Fine.Size >= 7.5);
        var (car, answer) = EverySheet.Car("demo");
        var pdf = PdfText.Of(FrameSheet.Pdf(car, answer, new SheetOptions(Paper.A4, new DateOnly(2026, 5, 4), "9.8.7")));
        Assert.Contains("Before you rely on this", pdf.All, StringComparison.Ordinal);
        Assert.InRange(pdf.Pages.Count, 1, 2);
    }

    [Fact]
    public void Letter_ThatTheFontsLack_IsMarkedAndTold()
    {
        var (car, answer) = EverySheet.Car("long names");
        var options = new SheetOptions(Paper.A4, new DateOnly(2026, 5, 4), "9.8.7");
        foreach (var (kind, bytes) in EverySheet.Of(car, answer, options))
        {
            Assert.True(PdfText.Of(bytes).All.Contains("stands for a letter that the fonts", StringComparison.Ordinal), kind);
        }

        var (demo, its) = EverySheet.Car("demo");
        Assert.DoesNotContain("stands for a letter", PdfText.Of(FrameSheet.Pdf(demo, its, options)).All, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_SameInput_SameBytes()
    {
        var (car, answer) = EverySheet.Car("demo");
        var options = new SheetOptions(Paper.Letter, new DateOnly(2026, 5, 4), "9.8.7", "T. Invented");
        Assert.All(
            EverySheet.Of(car, answer, options).Zip(EverySheet.Of(car, answer, options)),
            both => Assert.Equal(both.First.Pdf, both.Second.Pdf)
        );
    }
}
