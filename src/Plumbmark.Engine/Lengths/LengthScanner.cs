using System.Globalization;
using System.Numerics;
using static Plumbmark.Engine.Lengths.LengthOutcome;

namespace Plumbmark.Engine.Lengths;

/// <summary>Cuts a typed length into numbers, fractions, dashes and units; the first piece that is none of them stops it.</summary>
internal sealed class LengthScanner(string text, LengthRefusals refusals)
{
    private const string Strokes = "/\u2044\u2215"; // solidus, fraction slash, division slash
    private const string Dashes = "-\u2010\u2011\u2012\u2013\u2212"; // hyphen-minus, hyphens, figure and en dash, minus
    private readonly List<LengthToken> _tokens = [];
    private int _at;

    /// <summary>The pieces, the last one <see cref="LengthTokenKind.End"/>, or why there are none.</summary>
    public (IReadOnlyList<LengthToken> Tokens, Refused? Refused) Scan()
    {
        while (_at < text.Length)
        {
            if (char.IsWhiteSpace(text[_at]))
            {
                _at++;
            }
            else if (ScanOne() is { } refused)
            {
                return (_tokens, refused);
            }
        }

        Add(LengthTokenKind.End, _at);
        return (_tokens, null);
    }

    private Refused? ScanOne()
    {
        var c = text[_at];
        if (char.IsAsciiDigit(c) || c is '.' or ',')
        {
            return ScanNumber();
        }

        if (VulgarFractions.Of(c) is { } value)
        {
            return Add(LengthTokenKind.Fraction, _at + 1, value);
        }

        if (Dashes.Contains(c) || c == '+')
        {
            return Add(c == '+' ? LengthTokenKind.Plus : LengthTokenKind.Dash, _at + 1);
        }

        if (LengthUnitWords.ForMark(text.AsSpan(_at)) is { } mark)
        {
            return Add(LengthTokenKind.Unit, _at + mark.Length, unit: mark.Unit);
        }

        return char.IsLetter(c) ? ScanWord() : ScanStranger();
    }

    private Refused? ScanNumber()
    {
        var (start, end) = (_at, RunEnd(_at, c => char.IsAsciiDigit(c) || c is '.' or ','));
        var run = text[start..end];
        var separator = run.IndexOfAny(['.', ',']);
        if (end < text.Length && Strokes.Contains(text[end]))
        {
            return ScanFraction(start, end, isWhole: separator < 0);
        }

        if (separator < 0)
        {
            return Add(LengthTokenKind.Whole, end, Rational.Of(BigInteger.Parse(run, CultureInfo.InvariantCulture), 1));
        }

        var (whole, decimals) = (run[..separator], run[(separator + 1)..]);
        if (decimals.AsSpan().ContainsAny('.', ','))
        {
            return refusals.SeveralSeparators(start, end);
        }

        if (decimals.Length == 0)
        {
            return whole.Length == 0 ? refusals.UnknownCharacter(start, end) : refusals.NoDecimals(start, end);
        }

        // Thousands come in threes and never after a lone zero: 0,625 and 121,5 are decimals, 1,210 may be either.
        if (run[separator] == ',' && decimals.Length > 2 && whole is not ("" or "0"))
        {
            return decimals.Length == 3 ? refusals.ThousandsOrDecimals(start, end) : refusals.ManyDecimalsAfterComma(start, end);
        }

        var digits = BigInteger.Parse(whole + decimals, CultureInfo.InvariantCulture);
        return Add(LengthTokenKind.Decimal, end, Rational.Of(digits, BigInteger.Pow(10, decimals.Length)));
    }

    private Refused? ScanFraction(int start, int stroke, bool isWhole)
    {
        var end = RunEnd(stroke + 1, char.IsAsciiDigit);
        var isBroken = end == stroke + 1 || (end < text.Length && (Strokes.Contains(text[end]) || text[end] is '.' or ','));
        if (isBroken || !isWhole)
        {
            return isWhole ? refusals.IncompleteFraction(start, end) : refusals.DecimalAndFraction(start, end);
        }

        var above = BigInteger.Parse(text.AsSpan(start, stroke - start), CultureInfo.InvariantCulture);
        var below = BigInteger.Parse(text.AsSpan(stroke + 1, end - stroke - 1), CultureInfo.InvariantCulture);
        if (below.IsZero)
        {
            return refusals.DivisionByZero(start, end);
        }

        if (!VulgarFractions.IsOnARule(below))
        {
            return refusals.NotOnARule(start, end);
        }

        return above >= below ? refusals.ImproperFraction(start, end) : Add(LengthTokenKind.Fraction, end, Rational.Of(above, below));
    }

    private Refused? ScanWord()
    {
        var end = RunEnd(_at, char.IsLetter);
        var word = text[_at..end];
        var followsNumber = _tokens.Count > 0 && _tokens[^1].IsNumber;
        if (followsNumber && word is "e" or "E" && end < text.Length && (char.IsAsciiDigit(text[end]) || "+-".Contains(text[end])))
        {
            return refusals.PowerOfTen(_tokens[^1].Start, RunEnd(end + 1, char.IsAsciiDigit));
        }

        if (LengthUnitWords.ForWord(word) is not { } unit)
        {
            return followsNumber ? refusals.UnknownUnit(_at, end) : refusals.NoNumber(_at, end);
        }

        var withPoint = end < text.Length && text[end] == '.' ? end + 1 : end;
        return Add(LengthTokenKind.Unit, withPoint, unit: unit);
    }

    private Refused ScanStranger()
    {
        var isPair = _at + 1 < text.Length && char.IsSurrogatePair(text[_at], text[_at + 1]);
        var end = _at + (isPair ? 2 : 1);
        if (Strokes.Contains(text[_at]))
        {
            return refusals.IncompleteFraction(_at, end);
        }

        // Digits of other scripts, raised and lowered digits.
        var category = CharUnicodeInfo.GetUnicodeCategory(text, _at);
        var isNumber = category is UnicodeCategory.DecimalDigitNumber or UnicodeCategory.OtherNumber or UnicodeCategory.LetterNumber;
        return isNumber ? refusals.ForeignDigit(_at, end) : refusals.UnknownCharacter(_at, end);
    }

    private int RunEnd(int start, Func<char, bool> belongs)
    {
        var end = Math.Min(start, text.Length);
        while (end < text.Length && belongs(text[end]))
        {
            end++;
        }

        return end;
    }

    private Refused? Add(LengthTokenKind kind, int end, Rational value = default, TypedUnit? unit = null)
    {
        _tokens.Add(new LengthToken(kind, _at, end, value, unit));
        _at = end;
        return null;
    }
}
