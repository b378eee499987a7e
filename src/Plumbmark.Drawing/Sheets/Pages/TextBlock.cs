using Plumbmark.Drawing.Pictures;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>A paragraph, with a mark in front or without.</summary>
internal sealed class TextBlock(string text, Lettering lettering, string? mark = null, bool staysWithNext = false, double below = 3) : Block
{
    private const double MarkRoom = 9;
    private readonly IReadOnlyList<string>? _lines;
    private (double Width, IReadOnlyList<string> Lines) _measured = (double.NaN, []);

    private TextBlock(IReadOnlyList<string> lines, Lettering lettering, string? mark, double below)
        : this("", lettering, mark, staysWithNext: false, below) => _lines = lines;

    public override bool StaysWithNext => staysWithNext;

    public static TextBlock Heading(string text) => new(text, PageType.Heading, staysWithNext: true, below: 2);

    public static TextBlock CloseHeading(string text) => new(text, PageType.DenseHeading, staysWithNext: true, below: 0.5);

    public override IEnumerable<string> Texts => _lines ?? [text];

    public override double LeastHeight(double width) => Math.Min(Height(width), 2 * lettering.Leading());

    public override double Height(double width) => (Lines(width).Count * lettering.Leading()) + below;

    public override void Draw(SKCanvas canvas, double x, double y, double width)
    {
        if (mark is not null)
        {
            Write(canvas, mark, x, y + lettering.Size, lettering);
        }

        var baseline = y + lettering.Size;
        foreach (var line in Lines(width))
        {
            Write(canvas, line, x + Indent, baseline, lettering);
            baseline += lettering.Leading();
        }
    }

    public override (Block Fits, Block Remains)? Cut(double width, double room)
    {
        var lines = Lines(width);
        var fits = (int)((room - below) / lettering.Leading());
        return fits < 1 || fits >= lines.Count
            ? null
            : (
                new TextBlock([.. lines.Take(fits)], lettering, mark, below),
                new TextBlock([.. lines.Skip(fits)], lettering, mark is null ? null : " ", below)
            );
    }

    private double Indent => mark is null ? 0 : MarkRoom;

    private IReadOnlyList<string> Lines(double width)
    {
        if (_lines is not null)
        {
            return _lines;
        }

        if (_measured.Width != width)
        {
            _measured = (width, [.. Wrapped.Lines(text, lettering, width - Indent)]);
        }

        return _measured.Lines;
    }
}
