using System.Collections.Concurrent;
using System.Text;
using SkiaSharp;

namespace Plumbmark.Drawing.Fonts;

/// <summary>The two fonts that sheets are printed in, out of the program itself: no font of the machine is ever used.</summary>
internal static class Typefaces
{
    // Widths are measured once at this size and scaled: without hinting they are in proportion.
    private const double MeasuredSize = 1000;
    private static readonly ConcurrentDictionary<(int Rune, bool IsBold), double> s_widths = new();
    private static readonly ConcurrentDictionary<int, bool> s_printable = new();

    private static SKTypeface Regular { get; } = Load("Inter-Regular.ttf");

    private static SKTypeface Bold { get; } = Load("Inter-Bold.ttf");

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
        double width = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            width += s_widths.GetOrAdd((rune.Value, isBold), MeasuredWidth);
        }

        return width * size / MeasuredSize;
    }

    /// <summary>The text with a replacement mark for every character that the fonts lack, so that nothing is left out unseen.</summary>
    public static string Printable(string text)
    {
        var isWhole = true;
        foreach (var rune in text.EnumerateRunes())
        {
            isWhole &= IsPrintable(rune.Value);
        }

        if (isWhole)
        {
            return text;
        }

        var printable = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            printable.Append(IsPrintable(rune.Value) ? rune.ToString() : "\u25A1");
        }

        return printable.ToString();
    }

    private static bool IsPrintable(int rune) =>
        s_printable.GetOrAdd(
            rune,
            r =>
            {
                using var font = At(MeasuredSize, isBold: false);
                return font.ContainsGlyph(r);
            }
        );

    private static double MeasuredWidth((int Rune, bool IsBold) of)
    {
        using var font = At(MeasuredSize, of.IsBold);
        return font.MeasureText(Printable(char.ConvertFromUtf32(of.Rune)));
    }

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(Typefaces).Assembly.GetManifestResourceStream(name)!;
        return SKTypeface.FromStream(stream);
    }
}
