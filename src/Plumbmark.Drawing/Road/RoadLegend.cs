using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Drawing.Road;

/// <summary>What stands below a drawing of the wheels: remarks, and the lines explained.</summary>
internal static class RoadLegend
{
    private const double LineRow = 14;
    private const double EntryRow = 17;

    /// <summary>The shapes and where they end.</summary>
    public static (IReadOnlyList<Shape> Shapes, double Bottom) Draw(
        double top,
        RoadDrawingOptions options,
        IEnumerable<string> remarks,
        params IReadOnlyList<(Ink Ink, string Words)> lines
    )
    {
        var shapes = new List<Shape>();
        var y = top + 12;
        foreach (var line in remarks.SelectMany(r => Wrapped.Lines(r, Palette.Remark, options.Width - 4)))
        {
            shapes.Add(new Shape.Words(new Spot(2, y), line, Palette.Remark));
            y += LineRow;
        }

        foreach (var (ink, words) in options.HasLegend ? lines : [])
        {
            shapes.Add(new Shape.Line(new Spot(2, y - 4), new Spot(26, y - 4), ink));
            shapes.Add(new Shape.Words(new Spot(32, y), words, Palette.Note));
            y += EntryRow;
        }

        return (shapes, y);
    }

    /// <summary>A picture that only says why there is nothing to see.</summary>
    public static Picture Empty(RoadDrawingOptions options, string title, string sentence)
    {
        var lines = Wrapped.Lines(sentence, Palette.Remark, options.Width - 20).ToList();
        var shapes = lines.Select((line, i) => new Shape.Words(new Spot(10, 24 + (i * 15)), line, Palette.Remark));
        return new Picture(options.Width, 34 + (lines.Count * 15), title, sentence, [.. shapes]);
    }
}
