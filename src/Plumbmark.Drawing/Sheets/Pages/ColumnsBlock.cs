using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>Two stacks of blocks side by side. It is never cut.</summary>
/// <param name="left">The left stack.</param>
/// <param name="right">The right stack.</param>
/// <param name="leftShare">The part of the width that the left stack takes.</param>
internal sealed class ColumnsBlock(IReadOnlyList<Block> left, IReadOnlyList<Block> right, double leftShare) : Block
{
    private const double Gap = 14;

    public override double Height(double width) =>
        Math.Max(left.Sum(b => b.Height(LeftWidth(width))), right.Sum(b => b.Height(RightWidth(width))));

    public override void Draw(SKCanvas canvas, double x, double y, double width)
    {
        Stack(canvas, left, x, y, LeftWidth(width));
        Stack(canvas, right, x + LeftWidth(width) + Gap, y, RightWidth(width));
    }

    private static void Stack(SKCanvas canvas, IReadOnlyList<Block> blocks, double x, double y, double width)
    {
        foreach (var block in blocks)
        {
            block.Draw(canvas, x, y, width);
            y += block.Height(width);
        }
    }

    private double LeftWidth(double width) => (width - Gap) * leftShare;

    private double RightWidth(double width) => (width - Gap) * (1 - leftShare);
}
