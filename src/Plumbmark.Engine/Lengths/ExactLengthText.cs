using System.Numerics;

namespace Plumbmark.Engine.Lengths;

/// <summary>Writes numbers of inches and millimetres exactly: the writing half of <see cref="LengthText"/>.</summary>
internal static class ExactLengthText
{
    /// <summary>The minus of print, which a screen reader also speaks.</summary>
    public const char Minus = '\u2212';

    public static string Of(Length length) => $"{Number(length.Value, length.Unit)} {Symbol(length.Unit)}";

    public static string Symbol(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    private static string Number(Rational value, LengthUnit unit)
    {
        if (unit == LengthUnit.Inch && VulgarFractions.IsPowerOfTwoUpTo128(value.Denominator))
        {
            return Mixed(value);
        }

        return DecimalsNeeded(value.Denominator) is { } decimals ? Decimal(value, decimals) : Mixed(value);
    }

    /// <summary>Whole and reduced fraction, such as <c>47 5/8</c>; a fraction that only a character can say is written with it.</summary>
    public static string Mixed(Rational value)
    {
        var sign = value.Sign < 0 ? $"{Minus}" : "";
        var whole = BigInteger.DivRem(BigInteger.Abs(value.Numerator), value.Denominator, out var above);
        if (above.IsZero)
        {
            return $"{sign}{whole}";
        }

        var character = VulgarFractions.IsOnARule(value.Denominator) ? null : VulgarFractions.For(Rational.Of(above, value.Denominator));
        var fraction = character is { } c ? $"{c}" : $"{above}/{value.Denominator}";
        return whole.IsZero ? $"{sign}{fraction}" : $"{sign}{whole} {fraction}";
    }

    /// <summary>With exactly so many decimals; the value must need no more.</summary>
    public static string Decimal(Rational value, int decimals)
    {
        var sign = value.Sign < 0 ? $"{Minus}" : "";
        var scaled = BigInteger.Abs((value * Rational.Of(BigInteger.Pow(10, decimals), 1)).ToNearestWhole());
        var digits = scaled.ToString().PadLeft(decimals + 1, '0');
        return decimals == 0 ? $"{sign}{digits}" : $"{sign}{digits[..^decimals]}.{digits[^decimals..]}";
    }

    /// <summary>How many decimals a fraction with this denominator needs, or null when it never ends.</summary>
    public static int? DecimalsNeeded(BigInteger denominator)
    {
        var (twos, fives) = (0, 0);
        for (; denominator.IsEven; denominator /= 2)
        {
            twos++;
        }

        for (; (denominator % 5).IsZero; denominator /= 5)
        {
            fives++;
        }

        return denominator.IsOne ? Math.Max(twos, fives) : null;
    }
}
