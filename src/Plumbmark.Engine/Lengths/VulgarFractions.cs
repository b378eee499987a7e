using System.Numerics;

namespace Plumbmark.Engine.Lengths;

/// <summary>The fractions that have a character of their own in Unicode (block Number Forms and Latin-1), and which a rule has.</summary>
internal static class VulgarFractions
{
    // Each entry: the character, what is above the line, what is below.
    private static readonly (char Sign, int Above, int Below)[] s_signs =
    [
        ('¼', 1, 4),
        ('½', 1, 2),
        ('¾', 3, 4),
        ('⅐', 1, 7),
        ('⅑', 1, 9),
        ('⅒', 1, 10),
        ('⅓', 1, 3),
        ('⅔', 2, 3),
        ('⅕', 1, 5),
        ('⅖', 2, 5),
        ('⅗', 3, 5),
        ('⅘', 4, 5),
        ('⅙', 1, 6),
        ('⅚', 5, 6),
        ('⅛', 1, 8),
        ('⅜', 3, 8),
        ('⅝', 5, 8),
        ('⅞', 7, 8),
        ('↉', 0, 3),
    ];

    /// <summary>The value of a fraction character, or null when it is none.</summary>
    public static Rational? Of(char sign)
    {
        foreach (var entry in s_signs)
        {
            if (entry.Sign == sign)
            {
                return Rational.Of(entry.Above, entry.Below);
            }
        }

        return null;
    }

    /// <summary>The character of a value between 0 and 1, or null when there is none.</summary>
    public static char? For(Rational value)
    {
        foreach (var (sign, above, below) in s_signs)
        {
            if (value == Rational.Of(above, below))
            {
                return sign;
            }
        }

        return null;
    }

    /// <summary>
    /// Whether a rule is divided so: halves to 128ths, tenths, hundredths. Thirds, sixths and twelfths are left out although a few
    /// old rules have them, because 5/6 is far more often a slip for 5/16; whoever means them can write ⅚.
    /// </summary>
    public static bool IsOnARule(BigInteger below) => IsPowerOfTwoUpTo128(below) || below == 10 || below == 100;

    /// <summary>2, 4, 8, 16, 32, 64 or 128.</summary>
    public static bool IsPowerOfTwoUpTo128(BigInteger below) => below > 1 && below <= 128 && below.IsPowerOfTwo;
}
