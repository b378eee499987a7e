namespace Plumbmark.Drawing.Pictures;

/// <summary>Breaks words into lines of a width.</summary>
internal static class Wrapped
{
    public static IEnumerable<string> Lines(string text, Lettering lettering, double width) =>
        Lines(text, t => Plate.WidthOf(t, lettering), width);

    /// <summary>Breaks at spaces; a word longer than a line is broken where the line ends.</summary>
    public static IEnumerable<string> Lines(string text, Func<string, double> widthOf, double width)
    {
        var line = "";
        foreach (var word in text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (widthOf(longer) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                yield return line;
            }

            line = word;
            while (line.Length > 1 && widthOf(line) > width)
            {
                var fits = LongestFit(line, widthOf, width);
                yield return line[..fits];
                line = line[fits..];
            }
        }

        if (line.Length > 0)
        {
            yield return line;
        }
    }

    private static int LongestFit(string word, Func<string, double> widthOf, double width)
    {
        var fits = word.Length - 1;
        while (fits > 1 && widthOf(word[..fits]) > width)
        {
            fits--;
        }

        return fits > 1 && char.IsHighSurrogate(word[fits - 1]) ? fits - 1 : fits;
    }
}
