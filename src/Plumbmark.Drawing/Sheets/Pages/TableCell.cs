using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>A cell of a table: parts, each in its lettering, on one line when they fit, else one below the other.</summary>
internal sealed record TableCell(IReadOnlyList<(string Text, Lettering Lettering)> Parts, double LeastHeight = 0)
{
    public TableCell(string text)
        : this(text, PageType.Cell) { }

    public TableCell(string text, Lettering lettering)
        : this([(text, lettering)]) { }

    public static TableCell Empty { get; } = new("");

    private const double BetweenParts = 4;

    /// <summary>Whether each part has a line of its own in any case.</summary>
    public bool IsStacked { get; init; }

    /// <summary>Whether its text stands in the middle.</summary>
    public bool IsCentred { get; init; }

    /// <summary>The lines of the cell in a width, each with the parts that stand on it and how far from its beginning.</summary>
    public IEnumerable<IReadOnlyList<(double At, string Text, Lettering Lettering)>> Lines(double width)
    {
        var widths = Parts.Select(p => Plate.WidthOf(p.Text, p.Lettering)).ToList();
        if (!IsStacked && widths.Sum() + (BetweenParts * (Parts.Count - 1)) <= width)
        {
            var at = 0.0;
            var line = new List<(double, string, Lettering)>();
            for (var i = 0; i < Parts.Count; i++)
            {
                line.Add((at, Parts[i].Text, Parts[i].Lettering));
                at += widths[i] + BetweenParts;
            }

            yield return line;
            yield break;
        }

        foreach (var (text, lettering) in Parts)
        {
            foreach (var line in Wrapped.Lines(text, lettering, width))
            {
                yield return [(0, line, lettering)];
            }
        }
    }
}
