using Plumbmark.Drawing.Pictures;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>Something that stands on a page: it knows its height for a width, draws itself there, and may be cut where a page ends.</summary>
internal abstract class Block
{
    /// <summary>Whether a page must not end right behind it.</summary>
    public virtual bool StaysWithNext => false;

    /// <summary>The least height it is worth beginning with, when it can be cut.</summary>
    public virtual double LeastHeight(double width) => Height(width);

    public abstract double Height(double width);

    public abstract void Draw(SKCanvas canvas, double x, double y, double width);

    /// <summary>Every text on it, as it was given.</summary>
    public abstract IEnumerable<string> Texts { get; }

    /// <summary>The part that fits into the room and the rest; null when it cannot be cut there.</summary>
    public virtual (Block Fits, Block Remains)? Cut(double width, double room) => null;

    protected static void Write(
        SKCanvas canvas,
        string text,
        double x,
        double baseline,
        Lettering lettering,
        Anchor anchor = Anchor.Start
    ) => new CanvasSurface(canvas).Words(new Spot(x, baseline), text, lettering, anchor);
}
