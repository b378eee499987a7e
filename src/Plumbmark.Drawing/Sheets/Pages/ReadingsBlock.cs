using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Language;
using SkiaSharp;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>Readings of one kind under a caption, running down as many columns as the width holds, without rules.</summary>
/// <param name="caption">What kind they are; it comes again on every page.</param>
/// <param name="readings">The readings, in the order written down.</param>
internal sealed class ReadingsBlock(string caption, IReadOnlyList<ReadingsBlock.Line> readings) : Block
{
    /// <summary>A reading: its own name, what was measured, what was read, and whether it is doubted.</summary>
    public sealed record Line(string Id, string What, string Value, bool IsDoubted);

    private const int MostAcross = 8;
    private const double AfterPart = 4;
    private const double BetweenColumns = 10;
    private const double Below = 3;
    private static readonly Lettering s_caption = PageType.DenseGrey;
    private static readonly Lettering s_text = PageType.Dense;
    private static readonly Lettering s_doubted = PageType.OutSmall.Close();
    private Layout? _layout;

    /// <summary>Where everything stands for one width.</summary>
    /// <param name="Width">The width.</param>
    /// <param name="Across">How many columns.</param>
    /// <param name="WhatAt">Where what was measured begins in a column.</param>
    /// <param name="ValueAt">Where what was read begins; null when it follows in running text because a line is too long.</param>
    /// <param name="Texts">The lines of each reading behind its own name.</param>
    private sealed record Layout(double Width, int Across, double WhatAt, double? ValueAt, IReadOnlyList<IReadOnlyList<string>> Texts);

    public override IEnumerable<string> Texts => readings.SelectMany(r => new[] { r.Id, r.What, r.Value }).Prepend(caption);

    public override double LeastHeight(double width) => Math.Min(Height(width), Head(width) + (3 * s_text.Leading()));

    public override double Height(double width) => Head(width) + (LinesDown(width) * s_text.Leading()) + Below;

    public override (Block Fits, Block Remains)? Cut(double width, double room)
    {
        var down = (int)((room - Head(width)) / s_text.Leading());
        var fits = Columns(width, down).Take(Of(width).Across).Sum(c => c.Count);
        return fits == 0 || fits == readings.Count
            ? null
            : (new ReadingsBlock(caption, [.. readings.Take(fits)]), new ReadingsBlock(Continued(caption), [.. readings.Skip(fits)]));
    }

    public override void Draw(SKCanvas canvas, double x, double y, double width)
    {
        var layout = Of(width);
        foreach (var line in Wrapped.Lines(caption, s_caption, width))
        {
            y += s_caption.Leading();
            Write(canvas, line, x, y - s_caption.Leading() + s_caption.Size, s_caption);
        }

        var step = (width + BetweenColumns) / layout.Across;
        foreach (var column in Columns(width, LinesDown(width)))
        {
            var top = y;
            foreach (var index in column)
            {
                DrawReading(canvas, layout, index, x, top);
                top += LinesOf(layout, index) * s_text.Leading();
            }

            x += step;
        }
    }

    private void DrawReading(SKCanvas canvas, Layout layout, int index, double x, double top)
    {
        var (reading, baseline) = (readings[index], top + s_text.Size);
        var lettering = reading.IsDoubted ? s_doubted : s_text;
        Write(canvas, reading.Id, x, baseline, PageType.DenseGrey);
        foreach (var line in layout.Texts[index])
        {
            Write(canvas, line, x + layout.WhatAt, baseline, layout.ValueAt is null ? lettering : s_text);
            baseline += s_text.Leading();
        }

        if (layout.ValueAt is { } valueAt)
        {
            Write(canvas, reading.Value, x + valueAt, top + s_text.Size, lettering);
        }

        if (reading.IsDoubted)
        {
            Write(canvas, "doubted", x + (layout.ValueAt ?? layout.WhatAt), baseline, s_doubted);
        }
    }

    private int LinesOf(Layout layout, int index) => layout.Texts[index].Count + (readings[index].IsDoubted ? 1 : 0);

    private double Head(double width) => Wrapped.Lines(caption, s_caption, width).Count() * s_caption.Leading();

    /// <summary>The least number of lines down that holds every reading in the columns there are.</summary>
    private int LinesDown(double width)
    {
        var layout = Of(width);
        var lines = Enumerable.Range(0, readings.Count).Select(i => LinesOf(layout, i)).ToList();
        var down = Math.Max(lines.Max(), (lines.Sum() + layout.Across - 1) / layout.Across);
        while (Columns(width, down).Count > layout.Across)
        {
            down++;
        }

        return down;
    }

    /// <summary>Deals the readings out to columns of so many lines; a reading is never broken.</summary>
    private List<List<int>> Columns(double width, int down)
    {
        var layout = Of(width);
        var columns = new List<List<int>> { new() };
        var used = 0;
        for (var i = 0; i < readings.Count; i++)
        {
            var lines = LinesOf(layout, i);
            if (used + lines > down && columns[^1].Count > 0)
            {
                columns.Add([]);
                used = 0;
            }

            if (lines > down)
            {
                // Not even an empty column holds it: nothing more is dealt out here.
                return columns[^1].Count == 0 ? columns[..^1] : columns;
            }

            columns[^1].Add(i);
            used += lines;
        }

        return columns;
    }

    private Layout Of(double width)
    {
        if (_layout?.Width == width)
        {
            return _layout;
        }

        double Widest(Func<Line, string> text, Lettering lettering) => readings.Max(r => Plate.WidthOf(text(r), lettering));
        var whatAt = Math.Min(Widest(r => r.Id, PageType.DenseGrey), width / 3) + AfterPart;
        var valueAt = whatAt + Widest(r => r.What, s_text) + AfterPart;
        var column = valueAt + Math.Max(Widest(r => r.Value, s_text), Widest(r => r.IsDoubted ? r.Value : "", s_doubted)) + BetweenColumns;
        var across = Math.Clamp((int)((width + BetweenColumns) / column), 0, MostAcross);
        _layout =
            across > 0
                ? new Layout(width, across, whatAt, valueAt, [.. readings.Select(r => (IReadOnlyList<string>)[r.What])])
                : new Layout(
                    width,
                    1,
                    whatAt,
                    null,
                    [.. readings.Select(r => (IReadOnlyList<string>)[.. Wrapped.Lines($"{r.What}: {r.Value}", s_doubted, width - whatAt)])]
                );
        return _layout;
    }

    private static string Continued(string caption) =>
        caption.EndsWith(Again, StringComparison.Ordinal) ? caption : caption.TrimEnd('.') + Again;

    private static string Again => Inspection.Language.Texts.Say("sheet.readings-block.continued");
}
