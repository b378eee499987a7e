using System.Globalization;
using System.Text;
using static Plumbmark.Engine.Lengths.LengthOutcome;

namespace Plumbmark.Engine.Lengths;

/// <summary>Every sentence a person can be told about a length that was not understood.</summary>
internal sealed class LengthRefusals(string text)
{
    private const string Examples = "47 5/8, 5' 1 3/16\", 33.53 in, 1210 mm or 121.0 cm";

    public Refused Nothing() => At(0, 0, $"Nothing is written here. Write a length such as {Examples}.");

    public Refused TooLong(int most) =>
        new(
            most,
            Safe(text[most..]),
            $"This is {text.Length} characters long, and a length takes at most {most}. Write one length such as {Examples}."
        );

    public Refused UnknownCharacter(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” does not belong in a length. Write it such as {Examples}.");

    public Refused ForeignDigit(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” is not one of the digits 0 to 9. Write the number with those.");

    public Refused PowerOfTen(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” is a power of ten. Write the number out in full.");

    public Refused UnknownUnit(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” is not a unit known here. Use in, ft, thou, mm, cm or m.");

    public Refused NoNumber(int start, int end) =>
        start == end
            ? At(start, end, $"A number is missing here. Write a length such as {Examples}.")
            : At(start, end, $"“{Found(start, end)}” stands where a number is needed. Write a length such as {Examples}.");

    public Refused SeveralSeparators(int start, int end) =>
        At(
            start,
            end,
            $"“{Found(start, end)}” has more than one point or comma. Write one decimal point at most, and no mark between thousands."
        );

    public Refused NoDecimals(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” ends in a point or comma. Write the decimals behind it, or leave it out.");

    public Refused ThousandsOrDecimals(int start, int end)
    {
        var comma = text.IndexOf(',', start);
        var (whole, decimals) = (text[start..comma], text[(comma + 1)..end]);
        return At(
            start,
            end,
            $"“{Found(start, end)}” could be {whole}{decimals} or {whole}.{decimals}. Write it with a point for decimals and no mark between thousands."
        );
    }

    public Refused ManyDecimalsAfterComma(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” has more than two decimals behind a comma. Write a decimal point.");

    public Refused IncompleteFraction(int start, int end) =>
        At(
            start,
            end,
            $"“{Found(start, end)}” is half a fraction. Write whole numbers on both sides of the stroke, without spaces, such as 5/8."
        );

    public Refused DivisionByZero(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” divides by zero. Write a fraction such as 5/8.");

    public Refused NotOnARule(int start, int end) =>
        At(
            start,
            end,
            $"“{Found(start, end)}” is a fraction no rule is divided in. Use halves, 4ths, 8ths, 16ths, 32nds, 64ths, 128ths, 10ths or 100ths, or a decimal."
        );

    public Refused ImproperFraction(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” is not less than one. Write the whole number apart from the fraction, such as 47 5/8.");

    public Refused SecondFraction(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” is a second fraction. Write one length with one fraction, such as 47 5/8.");

    public Refused DecimalAndFraction(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” has decimals and a fraction. Write either, such as 1.5 or 1 1/2.");

    public Refused SecondNumber(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” is a second number. Write one length, and no space between thousands.");

    public Refused SpacedDash(int start, int end) =>
        At(
            start,
            end,
            "A dash between a whole number and its fraction must stand without spaces, such as 47-5/8. Or write a space alone: 47 5/8."
        );

    public Refused Sign(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” makes no sense for this length. Write it without a sign.");

    public Refused SecondUnit(int start, int end, TypedUnit first) =>
        At(start, end, $"“{Found(start, end)}” is a second unit behind {first.Symbol}. Write one unit; only feet and inches go together.");

    public Refused OtherUnitAfterFeet(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” cannot follow feet. Feet are followed by inches, such as 5 ft 1 3/16 in.");

    public Refused BrokenFeet(int start, int end) =>
        At(
            start,
            end,
            $"“{Found(start, end)}” is not a whole number of feet, yet inches follow. Write whole feet before inches, such as 5 ft 1 3/16 in."
        );

    public Refused TwelveInches(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” inches behind feet make another foot. Write less than 12 inches behind feet.");

    public Refused FractionOf(int start, int end, TypedUnit unit, bool isTyped) =>
        At(
            start,
            end,
            isTyped
                ? $"“{Found(start, end)}” is a fraction of {unit.Symbol}, which is divided in halves at most. Write a decimal, or inches if they are meant."
                : $"“{Found(start, end)}” looks like inches, but a number without a unit means {unit.Symbol} here. Write in behind it if inches are meant."
        );

    public Refused NotExpected(int start, int end) =>
        At(start, end, $"“{Found(start, end)}” is not expected after a complete length. Write one length such as {Examples}.");

    private Refused At(int start, int end, string sentence) => new(start, Found(start, end), sentence);

    private string Found(int start, int end) => Safe(text[start..end]);

    /// <summary>Shortened, and with control and other invisible characters told by number, so that it can be printed anywhere.</summary>
    private static string Safe(string piece)
    {
        const int Most = 24;
        var safe = new StringBuilder();
        foreach (var rune in piece.EnumerateRunes())
        {
            if (safe.Length >= Most)
            {
                return safe.Append('…').ToString();
            }

            var isVisible =
                Rune.GetUnicodeCategory(rune)
                is not (
                    UnicodeCategory.Control
                    or UnicodeCategory.Format
                    or UnicodeCategory.Surrogate
                    or UnicodeCategory.PrivateUse
                    or UnicodeCategory.OtherNotAssigned
                    or UnicodeCategory.LineSeparator
                    or UnicodeCategory.ParagraphSeparator
                );
            safe.Append(isVisible ? rune.ToString() : $"U+{rune.Value:X4}");
        }

        return safe.ToString();
    }
}
