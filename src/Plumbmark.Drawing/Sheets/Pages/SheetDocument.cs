using Plumbmark.Drawing.Fonts;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Language;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>A whole sheet: its titles and blocks, written as PDF. The same document gives the same bytes.</summary>
/// <param name="Title">What it is, such as "Frame sheet".</param>
/// <param name="Subject">Whose it is: the car.</param>
/// <param name="Options">Paper, date, version, author.</param>
/// <param name="Blocks">What stands on it.</param>
internal sealed record SheetDocument(string Title, string Subject, SheetOptions Options, IReadOnlyList<Block> Blocks)
{
    private static readonly Ink s_rule = new("page-rule", "#13262d", 1);
    private static readonly Ink s_foot = new("page-foot", "#b4bec2", 0.6);

    public byte[] Pdf()
    {
        var frame = PageFrame.Of(Options.Paper);
        var pages = Pages(frame);
        using var memory = new MemoryStream();
        using (var stream = new SKManagedWStream(memory))
        using (var document = SKDocument.CreatePdf(stream, Metadata()))
        {
            for (var number = 1; number <= pages.Count; number++)
            {
                var canvas = document.BeginPage((float)frame.Width, (float)frame.Height);
                DrawPage(canvas, frame, pages[number - 1], number, pages.Count);
                document.EndPage();
            }

            document.Close();
        }

        return PdfLanguage.Added(memory.ToArray());
    }

    // Room for the running line at the top of the second page and those after it.
    private const double Running = 14;

    /// <summary>Whether some text has letters that the fonts lack, so that a line about them is added.</summary>
    public bool LacksLetters => Blocks.SelectMany(b => b.Texts).Append(Subject).Any(t => Typefaces.Printable(t) != t);

    /// <summary>How high that line may be.</summary>
    public const double LackedLettersRoom = 24;

    /// <summary>How many pages it takes.</summary>
    public int PageCount => Pages(PageFrame.Of(Options.Paper)).Count;

    private IReadOnlyList<IReadOnlyList<PageBreaks.Placed>> Pages(PageFrame frame) =>
        PageBreaks.Of(
            [new HeadBlock(Title, Subject, DateText), .. Blocks, .. LackedLetters()],
            frame.TextWidth,
            frame.TextHeight,
            frame.TextHeight - Running
        );

    private IEnumerable<Block> LackedLetters() => LacksLetters ? [new TextBlock(Unprintable, PageType.Fine)] : [];

    // The fonts hold Latin, Greek and Cyrillic letters; those of the machine are not used, so that the same car gives the same sheet everywhere.
    private static string Unprintable => Texts.Say("sheet.document.stands-for-a-letter-that");

    private string DateText => Options.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private SKDocumentPdfMetadata Metadata()
    {
        var day = Options.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        return new SKDocumentPdfMetadata
        {
            Title = $"{Title}: {Subject}",
            Author = Options.Author ?? "",
            Subject = Title,
            Creator = $"Plumbmark {Options.Version}",
            Producer = "Plumbmark",
            Creation = day,
            Modified = day,
            RasterDpi = 300,
            EncodingQuality = 101,
        };
    }

    private void DrawPage(SKCanvas canvas, PageFrame frame, IReadOnlyList<PageBreaks.Placed> blocks, int number, int count)
    {
        var surface = new CanvasSurface(canvas);
        var (left, right) = (PageFrame.Beside, frame.Width - PageFrame.Beside);
        var top = PageFrame.Top;
        if (number > 1)
        {
            surface.Words(
                new Spot(left, top + 6),
                Plate.Cut($"{Title} – {Subject}", PageType.Small, right - left - 80),
                PageType.Small,
                Anchor.Start
            );
            surface.Words(new Spot(right, top + 6), DateText, PageType.Small, Anchor.End);
            surface.Path([new(left, top + 10), new(right, top + 10)], false, s_foot);
            top += Running;
        }

        foreach (var (block, y) in blocks)
        {
            block.Draw(canvas, left, top + y, frame.TextWidth);
        }

        var foot = frame.Height - PageFrame.Beside;
        surface.Path([new(left, foot - 9), new(right, foot - 9)], false, s_rule);
        surface.Words(new Spot(left, foot), Cautions.Foot, PageType.Small, Anchor.Start);
        surface.Words(
            new Spot(right, foot),
            Texts.Say("sheet.document.plumbmark-page-of", Options.Version, number, count),
            PageType.Small,
            Anchor.End
        );
    }
}
