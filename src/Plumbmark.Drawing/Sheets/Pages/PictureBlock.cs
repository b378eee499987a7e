using Plumbmark.Drawing.Pictures;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>A picture, as wide as it may be and never taller than given.</summary>
/// <param name="picture">The picture.</param>
/// <param name="tallest">How tall it may be, points.</param>
/// <param name="largestUnit">How large its unit may be printed, points, so that its words keep the size of those beside it.</param>
internal sealed class PictureBlock(Picture picture, double tallest, double largestUnit = double.PositiveInfinity) : Block
{
    public const double Below = 4;

    public override IEnumerable<string> Texts => picture.Shapes.SelectMany(WordsIn);

    private static IEnumerable<string> WordsIn(Shape shape) =>
        shape switch
        {
            Shape.Words words => [words.Text],
            Shape.Group group => group.Shapes.SelectMany(WordsIn),
            Shape.Link link => link.Shapes.SelectMany(WordsIn),
            _ => [],
        };

    public override double Height(double width) => (picture.Height * Scale(width)) + Below;

    public override void Draw(SKCanvas canvas, double x, double y, double width)
    {
        var scale = Scale(width);
        canvas.Save();
        canvas.Translate((float)(x + ((width - (picture.Width * scale)) / 2)), (float)y);
        canvas.Scale((float)scale);
        var surface = new CanvasSurface(canvas);
        foreach (var shape in picture.Shapes)
        {
            shape.DrawOn(surface);
        }

        canvas.Restore();
    }

    private double Scale(double width) => Math.Min(largestUnit, Math.Min(width / picture.Width, (tallest - Below) / picture.Height));
}
