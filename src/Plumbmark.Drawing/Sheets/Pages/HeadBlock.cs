using Plumbmark.Drawing.Pictures;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>The head of a sheet: what it is, whose it is, and when.</summary>
internal sealed class HeadBlock(string title, string subject, string date) : Block
{
    public const double Tall = 37;

    private static readonly Ink s_rule = new("head-rule", "#13262d", 1.6);

    public override IEnumerable<string> Texts => [title, subject, date];

    public override double Height(double width) => Tall;

    public override void Draw(SKCanvas canvas, double x, double y, double width)
    {
        Write(canvas, title, x, y + 13, PageType.Title);
        Write(canvas, date, x + width, y + 13, PageType.Strong, Anchor.End);
        Write(canvas, Plate.Cut(subject, PageType.Body, width), x, y + 27, PageType.Body);
        new CanvasSurface(canvas).Path([new Spot(x, y + 33), new Spot(x + width, y + 33)], false, s_rule);
    }
}
