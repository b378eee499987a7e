using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Floor;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The verdict on the whole in large letters with its mark, and the headline beside it.</summary>
internal sealed class VerdictBlock(Verdict verdict, string headline) : Block
{
    private const double MarkRoom = 24;
    private const double Above = 2;

    public override IEnumerable<string> Texts => [headline];

    public override double Height(double width) => Above + Math.Max(26, (Lines(width).Count * PageType.Body.Leading()) + 6) + 6;

    public override void Draw(SKCanvas canvas, double x, double y, double width)
    {
        var surface = new CanvasSurface(canvas);
        var colour = SheetWords.LetteringFor(verdict).Fill;
        canvas.Save();
        canvas.Translate((float)(x + 10), (float)(y + Above + 13));
        canvas.Scale(1.25f);
        foreach (var shape in Floor.PointSigns.Draw(Floor.PointSigns.For(verdict), new Spot(0, 0)))
        {
            shape.DrawOn(surface);
        }

        canvas.Restore();
        Write(canvas, Word, x + MarkRoom, y + Above + 20, PageType.Verdict with { Fill = colour });
        var baseline = y + Above + 13 - ((Lines(width).Count - 1) * PageType.Body.Leading() / 2) + 3;
        foreach (var line in Lines(width))
        {
            Write(canvas, line, x + WordEnd, baseline, PageType.Strong);
            baseline += PageType.Body.Leading();
        }
    }

    private string Word => SheetWords.For(verdict);

    private double WordEnd => MarkRoom + Plate.WidthOf(Word, PageType.Verdict) + 14;

    // A headline that only repeats the verdict says nothing.
    private IReadOnlyList<string> Lines(double width) =>
        headline.TrimEnd('.').Equals(Word, StringComparison.OrdinalIgnoreCase)
            ? []
            : [.. Wrapped.Lines(headline, PageType.Strong, width - WordEnd)];
}
