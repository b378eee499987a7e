using System.Numerics;

namespace Plumbmark.Engine.Lengths;

/// <summary>
/// An exact fraction of two whole numbers, always reduced, with the sign on top; <c>default</c> is 0. Not a measured value: a
/// measured value has an uncertainty and is a <see cref="double"/>.
/// </summary>
public readonly struct Rational : IEquatable<Rational>, IComparable<Rational>
{
    private readonly BigInteger _denominator; // zero in default, meaning one

    private Rational(BigInteger numerator, BigInteger denominator)
    {
        Numerator = numerator;
        _denominator = denominator;
    }

    /// <summary>The number above the line; carries the sign.</summary>
    public BigInteger Numerator { get; }

    /// <summary>The number below the line; at least 1.</summary>
    public BigInteger Denominator => _denominator.IsZero ? BigInteger.One : _denominator;

    /// <summary>-1, 0 or 1.</summary>
    public int Sign => Numerator.Sign;

    /// <summary>The fraction <paramref name="numerator"/>/<paramref name="denominator"/>, reduced.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is zero.</exception>
    public static Rational Of(BigInteger numerator, BigInteger denominator)
    {
        ArgumentOutOfRangeException.ThrowIfZero(denominator);
        var common = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        return new Rational(numerator / common, denominator / common);
    }

    /// <summary>The exact value of a decimal number.</summary>
    public static Rational Of(decimal value)
    {
        Span<int> bits = stackalloc int[4];
        decimal.GetBits(value, bits);
        var mantissa = ((BigInteger)(uint)bits[2] << 64) + ((BigInteger)(uint)bits[1] << 32) + (uint)bits[0];
        return Of(decimal.IsNegative(value) ? -mantissa : mantissa, BigInteger.Pow(10, value.Scale));
    }

    /// <summary>The exact value of a binary number: 0.1 becomes the fraction that the double really is, not 1/10.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Rational OfExactly(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "Only a finite number has an exact fraction.");
        }

        var bits = BitConverter.DoubleToInt64Bits(value);
        var exponent = (int)((bits >> 52) & 0x7FF);
        BigInteger mantissa = (bits & 0xF_FFFF_FFFF_FFFF) | (exponent == 0 ? 0 : 1L << 52);
        var power = Math.Max(exponent, 1) - 1075;
        mantissa = bits < 0 ? -mantissa : mantissa;
        return power >= 0 ? Of(mantissa << power, 1) : Of(mantissa, BigInteger.One << -power);
    }

    /// <summary>The nearest whole number; a half goes away from zero.</summary>
    public BigInteger ToNearestWhole()
    {
        var half = (BigInteger.Abs(Numerator) * 2 + Denominator) / (Denominator * 2);
        return half * Sign;
    }

    /// <summary>The smallest whole number that is not less.</summary>
    public BigInteger ToWholeAbove()
    {
        var quotient = BigInteger.DivRem(Numerator, Denominator, out var rest);
        return rest.Sign > 0 ? quotient + 1 : quotient;
    }

    /// <summary>The nearest double, ties to even: correctly rounded for magnitudes between 1e-300 and 1e300, infinite above the range.</summary>
    public double ToDouble()
    {
        if (Numerator.IsZero)
        {
            return 0;
        }

        // The quotient is given 62 or 63 bits, the last one also standing for everything dropped below it; then the
        // processor's own conversion from a 64-bit integer rounds once.
        var magnitude = BigInteger.Abs(Numerator);
        var shift = 62 - (int)(magnitude.GetBitLength() - Denominator.GetBitLength());
        var quotient =
            shift >= 0
                ? BigInteger.DivRem(magnitude << shift, Denominator, out var rest)
                : BigInteger.DivRem(magnitude, Denominator << -shift, out rest);
        var bits = (ulong)quotient | (rest.IsZero ? 0UL : 1UL);
        return Math.ScaleB((double)(long)bits, -shift) * Sign;
    }

    /// <summary>Exact sum.</summary>
    public static Rational operator +(Rational a, Rational b) =>
        Of(a.Numerator * b.Denominator + b.Numerator * a.Denominator, a.Denominator * b.Denominator);

    /// <summary>Exact difference.</summary>
    public static Rational operator -(Rational a, Rational b) => a + -b;

    /// <summary>The opposite.</summary>
    public static Rational operator -(Rational a) => new(-a.Numerator, a.Denominator);

    /// <summary>Exact product.</summary>
    public static Rational operator *(Rational a, Rational b) => Of(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    /// <summary>Exact quotient.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is zero.</exception>
    public static Rational operator /(Rational a, Rational b) => Of(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

    /// <summary>A whole number is a fraction.</summary>
    public static implicit operator Rational(int value) => new(value, BigInteger.One);

    /// <summary>The same value; since a fraction is always reduced, the same two numbers.</summary>
    public static bool operator ==(Rational a, Rational b) => a.Equals(b);

    /// <summary>Not the same value.</summary>
    public static bool operator !=(Rational a, Rational b) => !a.Equals(b);

    /// <summary>By value.</summary>
    public static bool operator <(Rational a, Rational b) => a.CompareTo(b) < 0;

    /// <summary>By value.</summary>
    public static bool operator >(Rational a, Rational b) => a.CompareTo(b) > 0;

    /// <summary>By value.</summary>
    public static bool operator <=(Rational a, Rational b) => a.CompareTo(b) <= 0;

    /// <summary>By value.</summary>
    public static bool operator >=(Rational a, Rational b) => a.CompareTo(b) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Rational other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <inheritdoc/>
    public bool Equals(Rational other) => Numerator == other.Numerator && Denominator == other.Denominator;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Numerator, Denominator);

    /// <summary>Such as <c>61/16</c>, or <c>3</c> for a whole number.</summary>
    public override string ToString() => Denominator.IsOne ? $"{Numerator}" : $"{Numerator}/{Denominator}";
}
