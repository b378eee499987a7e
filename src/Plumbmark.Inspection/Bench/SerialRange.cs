using System.Globalization;
using System.Text.RegularExpressions;

namespace Plumbmark.Inspection.Bench;

/// <summary>The serial numbers a variant was fitted to, ends included; an end that is null is open.</summary>
/// <remarks>Numbers compare within the same letters before them: <c>TX 00417</c> is below <c>TX 1200</c>, and neither to <c>GB 300</c>.</remarks>
/// <param name="From">The first; null for from the beginning.</param>
/// <param name="To">The last; null for to the end.</param>
public sealed partial record SerialRange(string? From, string? To)
{
    /// <summary>Whether a car lies in the range; null when its number cannot be compared, which is not a no.</summary>
    public bool? Contains(string? serial)
    {
        if (Parse(serial) is not { } car)
        {
            return null;
        }

        var (from, to) = (Parse(From), Parse(To));
        var comparable = (from is null || from.Value.Letters == car.Letters) && (to is null || to.Value.Letters == car.Letters);
        var readable = (From is null || from is not null) && (To is null || to is not null);
        return !comparable || !readable
            ? null
            : (from is null || car.Number >= from.Value.Number) && (to is null || car.Number <= to.Value.Number);
    }

    /// <summary>Whether a text is a serial number that can be compared: letters, then digits.</summary>
    public static bool IsReadable(string text) => Parse(text) is not null;

    private static (string Letters, long Number)? Parse(string? text)
    {
        var match = Shape().Match(text?.ToUpperInvariant() ?? "");
        return match.Success && long.TryParse(match.Groups["number"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? (match.Groups["letters"].Value, number)
            : null;
    }

    // Letters, then the running number; build letters behind it do not order cars. Anything else is not compared rather than guessed.
    [GeneratedRegex(
        @"^\s*(?<letters>[A-Z]*)[\s./-]*(?<number>[0-9]+)[\s./-]*[A-Z]*\s*$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 100
    )]
    private static partial Regex Shape();
}
