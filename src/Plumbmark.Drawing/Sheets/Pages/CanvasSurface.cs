using Plumbmark.Drawing.Fonts;
using Plumbmark.Drawing.Pictures;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>The canvas of a page as a surface for pictures: the same shapes as on screen, in the same inks.</summary>
internal sealed class CanvasSurface(SKCanvas canvas) : ISurface
{
    public void Path(IReadOnlyList<Spot> spots, bool isClosed, Ink ink)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(Point(spots[0]));
        foreach (var spot in spots.Skip(1))
        {
            builder.LineTo(Point(spot));
        }

        if (isClosed)
        {
            builder.Close();
        }

        using var path = builder.Detach();
        Paint(ink, isClosed, paint => canvas.DrawPath(path, paint));
    }

    public void Ellipse(Spot centre, double along, double across, double turnDegrees, Ink ink)
    {
        canvas.Save();
        canvas.Translate((float)centre.X, (float)centre.Y);
        canvas.RotateDegrees((float)turnDegrees);
        Paint(ink, isArea: true, paint => canvas.DrawOval(0, 0, (float)along, (float)across, paint));
        canvas.Restore();
    }

    public void Words(Spot at, string text, Lettering lettering, Anchor anchor)
    {
        var printable = Typefaces.Printable(text);
        var width = anchor == Anchor.Start ? 0 : Typefaces.Width(printable, lettering.Size, lettering.IsBold);
        var x = anchor switch
        {
            Anchor.Start => at.X,
            Anchor.Middle => at.X - (width / 2),
            Anchor.End => at.X - width,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        using var font = Typefaces.At(lettering.Size, lettering.IsBold);
        using var paint = new SKPaint { Color = SKColor.Parse(lettering.Fill), IsAntialias = true };
        canvas.DrawText(printable, (float)x, (float)at.Y, SKTextAlign.Left, font, paint);
    }

    public void Group(string name, string? title, IReadOnlyList<Shape> shapes)
    {
        foreach (var shape in shapes)
        {
            shape.DrawOn(this);
        }
    }

    public void Link(string href, string key, string title, IReadOnlyList<Shape> shapes) => Group("", title, shapes);

    private static SKPoint Point(Spot spot) => new((float)spot.X, (float)spot.Y);

    private static void Paint(Ink ink, bool isArea, Action<SKPaint> draw)
    {
        if (isArea && ink.Fill is { } fill)
        {
            using var paint = new SKPaint
            {
                Color = SKColor.Parse(fill),
                Style = SKPaintStyle.Fill,
                IsAntialias = true,
            };
            draw(paint);
        }

        if (ink.Stroke is not { } stroke)
        {
            return;
        }

        using var pen = new SKPaint
        {
            Color = SKColor.Parse(stroke),
            Style = SKPaintStyle.Stroke,
            StrokeWidth = (float)ink.Width,
            StrokeJoin = SKStrokeJoin.Round,
            IsAntialias = true,
        };
        using var dashes = ink.Dashes is { } lengths ? SKPathEffect.CreateDash([.. lengths.Select(l => (float)l)], 0) : null;
        pen.PathEffect = dashes;
        draw(pen);
    }
}
