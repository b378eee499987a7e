using System.Text;
using SkiaSharp;

namespace Plumbmark.Drawing.Fonts;

/// <summary>The two fonts that sheets are printed in, out of the program itself: no font of the machine is ever used.</summary>
internal static class Typefaces
{
    public static SKTypeface Regular { get; } = Load("Inter-Regular.ttf");

    public static SKTypeface Bold { get; } = Load("Inter-Bold.ttf");

    /// <summary>A font of that size; the caller disposes of it.</summary>
    public static SKFont At(double size, bool isBold) =>
        new(isBold ? Bold : Regular, (float)size)
        {
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
        };

    /// <summary>How wide a line of text is, in the unit of <paramref name="size"/>.</summary>
    public static double Width(string text, double size, bool isBold)
    {
        using var font = At(size, isBold);
        return font.MeasureText(Printable(text));
    }

    /// <summary>The text with a replacement mark for every character that the fonts lack, so that nothing is left out unseen.</summary>
    public static string Printable(string text)
    {
        using var font = At(12, isBold: false);
        if (font.ContainsGlyphs(text))
        {
            return text;
        }

        var printable = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            printable.Append(font.ContainsGlyph(rune.Value) ? rune.ToString() : "\uFFFD");
        }

        return printable.ToString();
    }

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(Typefaces).Assembly.GetManifestResourceStream(name)!;
        return SKTypeface.FromStream(stream);
    }
}
