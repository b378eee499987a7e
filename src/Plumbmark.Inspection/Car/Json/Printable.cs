using System.Globalization;
using System.Text;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>Makes what was found in somebody's file fit to print in a sentence: one line, nothing that moves a cursor or turns the writing round, not endless.</summary>
public static class Printable
{
    /// <summary>A sentence longer than this says no more by being longer.</summary>
    private const int MostCharacters = 1000;

    /// <summary>The text with every control or formatting character and half character shown as its number, and the middle left out when it is very long.</summary>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var clean = text.All(IsPlain) ? text : Cleaned(text);
        return clean.Length <= MostCharacters ? clean : Shortened(clean, MostCharacters / 2) + Ended(clean, MostCharacters / 2);
    }

    /// <summary>The beginning of a text, with an ellipsis when there is more; never half of a character.</summary>
    public static string Shortened(string text, int most)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length <= most ? text : text[..(char.IsHighSurrogate(text[most - 1]) ? most - 1 : most)] + "…";
    }

    private static string Ended(string text, int most) => text[(char.IsLowSurrogate(text[^most]) ? ^(most - 1) : ^most)..];

    private static bool IsPlain(char c) => c is >= ' ' and < (char)127 or > (char)160 and < (char)768;

    private static string Cleaned(string text)
    {
        var clean = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; )
        {
            if (!Rune.TryGetRuneAt(text, i, out var rune))
            {
                clean.Append(CultureInfo.InvariantCulture, $"<U+{(int)text[i]:X4}>");
                i++;
                continue;
            }

            // The ligature joiner holds one picture of several together and moves nothing.
            var isShown =
                rune.Value == 0x200D
                || Rune.GetUnicodeCategory(rune)
                    is not (
                        UnicodeCategory.Control
                        or UnicodeCategory.Format
                        or UnicodeCategory.LineSeparator
                        or UnicodeCategory.ParagraphSeparator
                    );
            _ = isShown
                ? clean.Append(text, i, rune.Utf16SequenceLength)
                : clean.Append(CultureInfo.InvariantCulture, $"<U+{rune.Value:X4}>");
            i += rune.Utf16SequenceLength;
        }

        return clean.ToString();
    }
}
