using System.Globalization;

namespace Plumbmark.Engine.Lengths;

/// <summary>
/// A length as a person gave it: an exact number of inches or millimetres, with the text as typed; <c>default</c> is 0 mm. It may be
/// negative (an offset). It knows nothing of how well it was measured: that is the uncertainty's business, and a computed length is
/// a <see cref="double"/> in metres.
/// </summary>
/// <remarks>
/// Equal means the same exact length: 1 in equals 25.4 mm, and the text as typed plays no part. Arithmetic is exact; a result has
/// the unit of its left operand and no typed text.
/// </remarks>
public readonly struct Length : IEquatable<Length>, IComparable<Length>
{
    private static readonly Rational s_millimetresPerInch = Rational.Of(25.4m);
    private readonly string? _typed;

    private Length(Rational value, LengthUnit unit, string? typed)
    {
        Value = value;
        Unit = unit;
        _typed = typed;
    }

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>The exact number, in <see cref="Unit"/>.</summary>
    public Rational Value { get; }

    /// <summary>The unit the length is kept in: the one it was typed in, or for feet and thou the inch, for centimetres and metres the millimetre.</summary>
    public LengthUnit Unit { get; }

    /// <summary>The text as the person wrote it, unchanged; for a length nobody typed, the same as <see cref="ToString"/>.</summary>
    public string AsTyped => _typed ?? ToString();

    /// <summary>The length in metres, correctly rounded.</summary>
    public double Metres => (ExactMillimetres / 1000).ToDouble();

    /// <summary>The length in millimetres, correctly rounded.</summary>
    public double Millimetres => ExactMillimetres.ToDouble();

    /// <summary>The length in inches, correctly rounded.</summary>
    public double Inches => ExactInches.ToDouble();

    /// <summary>The exact number of millimetres.</summary>
    public Rational ExactMillimetres => Unit == LengthUnit.Inch ? Value * s_millimetresPerInch : Value;

    /// <summary>The exact number of inches.</summary>
    public Rational ExactInches => Unit == LengthUnit.Inch ? Value : Value / s_millimetresPerInch;

    /// <summary>A number of millimetres.</summary>
    public static Length FromMillimetres(decimal millimetres) => new(Rational.Of(millimetres), LengthUnit.Millimetre, null);

    /// <summary>A number of inches.</summary>
    public static Length FromInches(decimal inches) => new(Rational.Of(inches), LengthUnit.Inch, null);

    /// <summary>An exact fraction of a unit, such as 381/8 in.</summary>
    public static Length FromFraction(Rational value, LengthUnit unit) => new(value, unit, null);

    /// <summary>Whole and fraction as read off a rule: <c>FromFraction(47, 5, 8, LengthUnit.Inch)</c> is 47 5/8 in.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is zero.</exception>
    public static Length FromFraction(int whole, int numerator, int denominator, LengthUnit unit) =>
        new(whole + Rational.Of(numerator, denominator), unit, null);

    /// <summary>A bare number from a file, in the file's unit; the number itself, with its trailing zeros, is the text as typed.</summary>
    public static Length FromNumber(decimal number, LengthUnit unit) =>
        new(Rational.Of(number), unit, number.ToString(CultureInfo.InvariantCulture));

    internal static Length FromText(Rational value, LengthUnit unit, string typed) => new(value, unit, typed);

    /// <summary>The same length kept in another unit, exactly; the typed text stays.</summary>
    public Length In(LengthUnit unit) => new(unit == LengthUnit.Inch ? ExactInches : ExactMillimetres, unit, _typed);

    /// <summary>The length without its sign.</summary>
    public Length Abs() => Value.Sign < 0 ? -this : this;

    /// <summary>The nearest multiple of a tool's division, in the division's unit; a half goes away from zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The division is not positive.</exception>
    public Length RoundedTo(Length division) => new LengthDisplay(division).Rounded(this);

    /// <summary>The length as a tool with this division would show it, such as <c>47 5/8 in</c>: see <see cref="LengthDisplay"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The division is not positive.</exception>
    public string Format(Length division) => new LengthDisplay(division).Text(this);

    /// <summary>Exact sum, in the unit of <paramref name="a"/>.</summary>
    public static Length operator +(Length a, Length b) => new(a.Value + b.In(a.Unit).Value, a.Unit, null);

    /// <summary>Exact difference, in the unit of <paramref name="a"/>.</summary>
    public static Length operator -(Length a, Length b) => new(a.Value - b.In(a.Unit).Value, a.Unit, null);

    /// <summary>The opposite.</summary>
    public static Length operator -(Length a) => new(-a.Value, a.Unit, null);

    /// <summary>Exact multiple.</summary>
    public static Length operator *(Length a, Rational factor) => new(a.Value * factor, a.Unit, null);

    /// <summary>Exact multiple.</summary>
    public static Length operator *(Rational factor, Length a) => a * factor;

    /// <summary>Exact part.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is zero.</exception>
    public static Length operator /(Length a, Rational divisor) => new(a.Value / divisor, a.Unit, null);

    /// <summary>The same exact length.</summary>
    public static bool operator ==(Length a, Length b) => a.Equals(b);

    /// <summary>Not the same exact length.</summary>
    public static bool operator !=(Length a, Length b) => !a.Equals(b);

    /// <summary>Shorter.</summary>
    public static bool operator <(Length a, Length b) => a.CompareTo(b) < 0;

    /// <summary>Longer.</summary>
    public static bool operator >(Length a, Length b) => a.CompareTo(b) > 0;

    /// <summary>Not longer.</summary>
    public static bool operator <=(Length a, Length b) => a.CompareTo(b) <= 0;

    /// <summary>Not shorter.</summary>
    public static bool operator >=(Length a, Length b) => a.CompareTo(b) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Length other) => ExactMillimetres.CompareTo(other.ExactMillimetres);

    /// <inheritdoc/>
    public bool Equals(Length other) => ExactMillimetres == other.ExactMillimetres;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Length other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => ExactMillimetres.GetHashCode();

    /// <summary>
    /// The exact length with its unit, such as <c>47 5/8 in</c> or <c>1209.5 mm</c>, which <see cref="LengthText"/> reads back. A value no
    /// rule shows and no decimal ends (10 mm in inches) is written as a plain fraction, which it does not read.
    /// </summary>
    public override string ToString() => ExactLengthText.Of(this);
}
