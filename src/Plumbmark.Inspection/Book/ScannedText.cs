using System.Text.RegularExpressions;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>What a scan typically makes of printed fractions, so that a figure that cannot be read is refused with a hint.</summary>
/// <remarks>Seen in reprints read as text: 1/8 becomes B; l or I stands for 1, O for 0. No published source.</remarks>
internal static partial class ScannedText
{
    /// <summary>Why a text is refused and what it may have been; null when it has no such mark.</summary>
    public static string? Refusal(string text) =>
        text.Length > Engine.Lengths.LengthText.MostCharacters ? null
        : LostEighth().IsMatch(text) ? Texts.Say("book.scanned.found-a-scan-often-makes", text.Trim())
        : LetterForDigit().IsMatch(text) ? Texts.Say("book.scanned.found-a-scan-often-makes-a-letter-of-a", text.Trim())
        : null;

    [GeneratedRegex(@"^\s*([0-9]+[\s-]*)?B\s*(in|""|″)?\s*$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex LostEighth();

    [GeneratedRegex(
        @"^\s*(?=.*[0-9])(?=.*[lIO|])[0-9lIO|\s./-]+(in|mm|""|″)?\s*$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    )]
    private static partial Regex LetterForDigit();
}
