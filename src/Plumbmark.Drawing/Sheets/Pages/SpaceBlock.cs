using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>Nothing, of a height.</summary>
internal sealed class SpaceBlock(double height) : Block
{
    public override IEnumerable<string> Texts => [];

    public override double Height(double width) => height;

    public override void Draw(SKCanvas canvas, double x, double y, double width) { }
}
