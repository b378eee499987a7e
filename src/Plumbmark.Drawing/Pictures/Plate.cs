using Plumbmark.Drawing.Fonts;

namespace Plumbmark.Drawing.Pictures;

/// <summary>White ground behind words, so that they can be read across lines.</summary>
internal static class Plate
{
    public static double WidthOf(string text, Lettering lettering) => Typefaces.Width(text, lettering.Size, lettering.IsBold);

    /// <summary>A white plate and the words on it.</summary>
    public static IEnumerable<Shape> Behind(Shape.Words words)
    {
        var (left, right) = Ends(words);
        var (top, bottom) = (words.At.Y - (words.Lettering.Size * 0.86), words.At.Y + (words.Lettering.Size * 0.3));
        Spot[] corners = [new(left - 2, top), new(right + 2, top), new(right + 2, bottom), new(left - 2, bottom)];
        return [new Shape.Path(corners, true, Palette.Plate), words];
    }

    /// <summary>The words moved so far that they lie inside the picture.</summary>
    public static Shape.Words Inside(Shape.Words words, double pictureWidth)
    {
        var (left, right) = Ends(words);
        var move =
            left < 4 ? 4 - left
            : right > pictureWidth - 4 ? pictureWidth - 4 - right
            : 0;
        return words with { At = words.At.Moved(move, 0) };
    }

    private static (double Left, double Right) Ends(Shape.Words words)
    {
        var width = WidthOf(words.Text, words.Lettering);
        var left = words.Anchor switch
        {
            Anchor.Start => words.At.X,
            Anchor.Middle => words.At.X - (width / 2),
            Anchor.End => words.At.X - width,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return (left, left + width);
    }

    /// <summary>The text cut to a width, with three dots where something is missing.</summary>
    public static string Cut(string text, Lettering lettering, double width)
    {
        if (WidthOf(text, lettering) <= width)
        {
            return text;
        }

        var kept = text.Length;
        while (kept > 1 && WidthOf(text[..kept] + "…", lettering) > width)
        {
            kept -= char.IsLowSurrogate(text[kept - 1]) ? 2 : 1;
        }

        return text[..kept] + "…";
    }
}
