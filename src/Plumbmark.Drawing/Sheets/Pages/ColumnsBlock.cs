using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>Two stacks of blocks side by side.</summary>
/// <param name="left">The left stack.</param>
/// <param name="right">The right stack.</param>
/// <param name="leftShare">The part of the width that the left stack takes.</param>
/// <param name="isCuttable">Whether it may run over the end of a page; what is left of one stack alone then takes the whole width.</param>
internal sealed class ColumnsBlock(IReadOnlyList<Block> left, IReadOnlyList<Block> right, double leftShare, bool isCuttable = false) : Block
{
    private const double Between = 14;

    private double Gap => left.Count == 0 ? 0 : Between;

    /// <summary>How wide the two stacks are.</summary>
    public static (double Left, double Right) Widths(double width, double leftShare) =>
        ((width - Between) * leftShare, (width - Between) * (1 - leftShare));

    public override IEnumerable<string> Texts => left.Concat(right).SelectMany(b => b.Texts);

    public override double Height(double width) =>
        Math.Max(left.Sum(b => b.Height(LeftWidth(width))), right.Sum(b => b.Height(RightWidth(width))));

    public override double LeastHeight(double width) =>
        isCuttable ? Math.Max(Least(left, LeftWidth(width)), Least(right, RightWidth(width))) : Height(width);

    public override (Block Fits, Block Remains)? Cut(double width, double room)
    {
        var (leftFits, leftRemains) = Split(left, LeftWidth(width), room);
        var (rightFits, rightRemains) = Split(right, RightWidth(width), room);
        var isCut = isCuttable && (leftFits.Count > 0 || rightFits.Count > 0) && (leftRemains.Count > 0 || rightRemains.Count > 0);
        return isCut ? (new ColumnsBlock(leftFits, rightFits, leftShare, true), Rest(leftRemains, rightRemains)) : null;
    }

    private ColumnsBlock Rest(IReadOnlyList<Block> leftRemains, IReadOnlyList<Block> rightRemains) =>
        leftRemains.Count == 0 ? new ColumnsBlock([], rightRemains, 0, true)
        : rightRemains.Count == 0 ? new ColumnsBlock([], leftRemains, 0, true)
        : new ColumnsBlock(leftRemains, rightRemains, leftShare, true);

    /// <summary>The blocks that fit into the room, and those that do not; a heading goes with what it heads.</summary>
    private static (IReadOnlyList<Block> Fits, IReadOnlyList<Block> Remains) Split(IReadOnlyList<Block> blocks, double width, double room)
    {
        var (used, count) = (0.0, 0);
        while (count < blocks.Count && used + blocks[count].Height(width) <= room)
        {
            used += blocks[count].Height(width);
            count++;
        }

        while (count < blocks.Count && count > 0 && blocks[count - 1].StaysWithNext)
        {
            count--;
        }

        return ([.. blocks.Take(count)], [.. blocks.Skip(count)]);
    }

    private static double Least(IReadOnlyList<Block> blocks, double width)
    {
        var headed = blocks.TakeWhile(b => b.StaysWithNext).Count();
        return blocks.Take(headed + 1).Sum(b => b.Height(width));
    }

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
