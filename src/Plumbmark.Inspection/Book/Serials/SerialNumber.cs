using System.Globalization;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>A serial number as a maker writes it: letters in front (the series), a running number, letters behind (the build).</summary>
/// <remarks>
/// <para>Blanks, points, strokes and dashes do not count, nor do leading zeros or small letters: <c>q.d. 00417</c> is <c>QD417</c>.</para>
/// <para>The running number is the last group of digits; what stands in front of it, digits included, is the series: <c>QD3/1047 L</c> is number
/// 1047 of series QD3. A series that ends in a digit needs its break, because <c>QD31047</c> says something else.</para>
/// <para>No order is known between series, nor between build letters. Common practice, no published source: makers differ, and what is not the
/// same series by its letters is never compared.</para>
/// </remarks>
public sealed record SerialNumber
{
    private const int MostCharacters = 40;
    private const int MostDigits = 15;

    private SerialNumber(string asWritten, string series, long number, string build) =>
        (AsWritten, Series, Number, Build) = (asWritten, series, number, build);

    /// <summary>The text as it was written.</summary>
    public string AsWritten { get; }

    /// <summary>What stands in front of the running number, capitals and digits only; empty when nothing does.</summary>
    public string Series { get; }

    /// <summary>The running number within its series.</summary>
    public long Number { get; }

    /// <summary>The letters behind the running number; empty when there are none.</summary>
    public string Build { get; }

    /// <summary>The serial number in a text; null when the text holds no running number.</summary>
    public static SerialNumber? Read(string? text)
    {
        if (text is null || text.Length > MostCharacters)
        {
            return null;
        }

        var end = text.Length - 1;
        while (end >= 0 && !char.IsAsciiDigit(text[end]))
        {
            end--;
        }

        var start = end;
        while (start > 0 && char.IsAsciiDigit(text[start - 1]))
        {
            start--;
        }

        if (end < 0 || !text.All(IsAllowed))
        {
            return null;
        }

        var digits = text[start..(end + 1)].TrimStart('0');
        return digits.Length > MostDigits
            ? null
            : new SerialNumber(
                text.Trim(),
                SeriesOf(text[..start]),
                digits.Length == 0 ? 0 : long.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture),
                Bare(text[(end + 1)..])
            );
    }

    /// <summary>What to write instead of a text that is no serial number.</summary>
    public static string Allowed => Texts.Say("book.serial-number.a-serial-number-is-needed");

    /// <summary>How this number stands to another.</summary>
    public SerialOrder To(SerialNumber other) =>
        Series != other.Series ? SerialOrder.CannotBeCompared
        : Number < other.Number ? SerialOrder.Before
        : Number > other.Number ? SerialOrder.After
        : Build == other.Build || Build.Length == 0 || other.Build.Length == 0 ? SerialOrder.Same
        : SerialOrder.CannotBeCompared;

    /// <summary>The number in the same series with another running number, written plainly.</summary>
    internal SerialNumber With(long number) =>
        new(Series.Length == 0 ? $"{number}" : $"{Series.Replace('|', '/')} {number}", Series, number, "");

    /// <summary>The same series, number and build, however written.</summary>
    public bool Equals(SerialNumber? other) =>
        other is not null && Series == other.Series && Number == other.Number && Build == other.Build;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Series, Number, Build);

    /// <summary>As it was written.</summary>
    public override string ToString() => AsWritten;

    // A break between two groups of digits stays: 61-2 and 612 are different series.
    private static string SeriesOf(string text)
    {
        var series = new System.Text.StringBuilder();
        var isBroken = false;
        foreach (var c in text)
        {
            if (!char.IsLetterOrDigit(c))
            {
                isBroken = true;
                continue;
            }

            if (isBroken && char.IsAsciiDigit(c) && series.Length > 0 && char.IsAsciiDigit(series[^1]))
            {
                series.Append('|');
            }

            series.Append(char.ToUpperInvariant(c));
            isBroken = false;
        }

        return series.ToString();
    }

    private static string Bare(string text) => string.Concat(text.Where(char.IsLetter).Select(char.ToUpperInvariant));

    private static bool IsAllowed(char c) =>
        char.IsLetter(c) || char.IsAsciiDigit(c) || c is ' ' or '\u00a0' or '.' or '/' or '-' or '–' or '_' or '*';
}
