using Plumbmark.Drawing.Pictures;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>A table whose head comes again on every page. Rows are never cut.</summary>
/// <param name="columns">Its columns.</param>
/// <param name="rows">Its rows, each a cell for every column.</param>
/// <param name="isBox">Whether every cell has a frame to write in, rather than a line below each row.</param>
/// <param name="padding">Room above and below the text of a row.</param>
internal sealed class TableBlock(
    IReadOnlyList<TableColumn> columns,
    IReadOnlyList<IReadOnlyList<TableCell>> rows,
    bool isBox = false,
    double padding = 1.4
) : Block
{
    private const double Beside = 3;
    private const double AfterTable = 5;
    private static readonly Ink s_line = new("table-line", "#b4bec2", 0.5);
    private static readonly Ink s_headLine = new("table-head-line", "#13262d", 0.9);
    private static readonly Ink s_box = new("table-box", "#13262d", 0.6);
    private double _measuredFor = double.NaN;
    private double[] _heights = [];

    public override IEnumerable<string> Texts =>
        columns.Select(c => c.Head).Concat(rows.SelectMany(r => r).SelectMany(c => c.Parts).Select(p => p.Text));

    public override double LeastHeight(double width) =>
        HeadHeight(width) + Heights(width).Take(2).Sum() + (rows.Count <= 2 ? AfterTable : 0);

    public override double Height(double width) => HeadHeight(width) + Heights(width).Sum() + AfterTable;

    public override (Block Fits, Block Remains)? Cut(double width, double room)
    {
        var used = HeadHeight(width);
        var fits = 0;
        foreach (var height in Heights(width))
        {
            if (used + height > room)
            {
                break;
            }

            used += height;
            fits++;
        }

        return fits == 0 || fits == rows.Count ? null : (Part(..fits), Part(fits..));

        // What is measured once stays measured: a long table is cut once a page.
        TableBlock Part(Range range) =>
            new(columns, [.. rows.Take(range)], isBox, padding) { _measuredFor = width, _heights = Heights(width)[range] };
    }

    public override void Draw(SKCanvas canvas, double x, double y, double width)
    {
        var surface = new CanvasSurface(canvas);
        var lefts = Lefts(width);
        var bottom = y + HeadHeight(width);
        DrawCells([.. columns.Select(c => new TableCell(c.Head, PageType.SmallStrong))], y);
        surface.Path([new Spot(x, bottom), new Spot(x + width, bottom)], false, s_headLine);
        for (var r = 0; r < rows.Count; r++)
        {
            DrawCells(rows[r], bottom);
            var next = bottom + Heights(width)[r];
            if (isBox)
            {
                for (var c = 0; c < columns.Count; c++)
                {
                    var (l, right) = (x + lefts[c], x + lefts[c + 1]);
                    surface.Path([new(l, bottom), new(right, bottom), new(right, next), new(l, next)], true, s_box);
                }
            }
            else
            {
                surface.Path([new Spot(x, next), new Spot(x + width, next)], false, s_line);
            }

            bottom = next;
        }

        void DrawCells(IReadOnlyList<TableCell> cells, double top)
        {
            for (var c = 0; c < columns.Count; c++)
            {
                var anchor =
                    cells[c].IsCentred ? Anchor.Middle
                    : columns[c].IsRight ? Anchor.End
                    : Anchor.Start;
                var at = anchor switch
                {
                    Anchor.Middle => x + ((lefts[c] + lefts[c + 1]) / 2),
                    Anchor.End => x + lefts[c + 1] - Beside,
                    _ => x + lefts[c] + Beside,
                };
                var lineTop = top + padding;
                foreach (var line in cells[c].Lines(lefts[c + 1] - lefts[c] - (2 * Beside)))
                {
                    foreach (var part in line)
                    {
                        Write(canvas, part.Text, at + part.At, lineTop + part.Lettering.Size, part.Lettering, anchor);
                    }

                    lineTop += LeadingOf(line);
                }
            }
        }
    }

    private double HeadHeight(double width)
    {
        var lefts = Lefts(width);
        var heads = columns.Select(
            (c, i) => new TableCell(c.Head, PageType.SmallStrong).Lines(lefts[i + 1] - lefts[i] - (2 * Beside)).Count()
        );
        return (heads.Max() * PageType.SmallStrong.Leading()) + (2 * padding);
    }

    private double[] Heights(double width)
    {
        if (_measuredFor != width)
        {
            var lefts = Lefts(width);
            _heights = [.. rows.Select(r => RowHeight(r, lefts))];
            _measuredFor = width;
        }

        return _heights;
    }

    private double RowHeight(IReadOnlyList<TableCell> cells, double[] lefts)
    {
        var tallest = 0.0;
        for (var c = 0; c < columns.Count; c++)
        {
            var text = cells[c].Lines(lefts[c + 1] - lefts[c] - (2 * Beside)).Sum(LeadingOf);
            tallest = Math.Max(tallest, Math.Max(text, cells[c].LeastHeight));
        }

        return tallest + (2 * padding);
    }

    private static double LeadingOf(IReadOnlyList<(double At, string Text, Lettering Lettering)> line) =>
        line.Max(p => p.Lettering.Leading());

    private double[] Lefts(double width)
    {
        var total = columns.Sum(c => c.Share);
        var lefts = new double[columns.Count + 1];
        for (var c = 0; c < columns.Count; c++)
        {
            lefts[c + 1] = lefts[c] + (width * columns[c].Share / total);
        }

        return lefts;
    }
}
