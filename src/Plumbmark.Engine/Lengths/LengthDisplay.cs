using System.Numerics;

namespace Plumbmark.Engine.Lengths;

/// <summary>
/// How lengths are shown on a sheet or screen: to the division of the tool, in its unit and never finer. Not a conversion of what
/// was typed: <see cref="Length.AsTyped"/> is shown as it is.
/// </summary>
/// <remarks>
/// Inch divisions by halves show reduced fractions (<c>47 5/8 in</c>), all others decimals, as many as the division itself needs
/// (<c>1209.5 mm</c>). A half division goes away from zero; the carry is exact because the number shown is a whole number of divisions.
/// </remarks>
public readonly struct LengthDisplay : IEquatable<LengthDisplay>
{
    private readonly Length _division; // zero in default, meaning 1 mm

    /// <summary>Shows to this division, in the division's own unit.</summary>
    /// <param name="division">The tool's smallest division, such as 1/16 in; positive.</param>
    /// <param name="feetAndInches">Whether inches from 12 up are shown as <c>5 ft 1 3/16 in</c>; without meaning in millimetres.</param>
    /// <exception cref="ArgumentOutOfRangeException">The division is not positive.</exception>
    public LengthDisplay(Length division, bool feetAndInches = false)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(division, Length.Zero);
        _division = division;
        FeetAndInches = feetAndInches && division.Unit == LengthUnit.Inch;
    }

    // Finest first; the steps that rules, calipers and feelers are divided in.
    private static readonly Length[] s_inchSteps =
    [
        .. new[] { 0.001m, 0.002m, 0.005m }.Select(Length.FromInches),
        .. new[] { 128, 64, 32, 16, 8, 4, 2, 1 }.Select(below => Length.FromFraction(Rational.Of(1, below), LengthUnit.Inch)),
    ];
    private static readonly Length[] s_millimetreSteps =
    [
        .. new[] { 0.001m, 0.002m, 0.005m, 0.01m, 0.02m, 0.05m, 0.1m, 0.2m, 0.5m, 1, 2, 5, 10, 20, 50 }.Select(Length.FromMillimetres),
    ];

    /// <summary>The step shown; 1 mm in <c>default</c>.</summary>
    public Length Division => _division == Length.Zero ? Length.FromMillimetres(1) : _division;

    /// <summary>The unit shown.</summary>
    public LengthUnit Unit => Division.Unit;

    /// <summary>Whether inches from 12 up are shown as feet and inches.</summary>
    public bool FeetAndInches { get; }

    /// <summary>
    /// Shows in a chosen unit what a tool of this division measured: its own division if the units agree, else the finest usual step of the
    /// chosen unit that is not finer (1/32 in becomes 1 mm; 1 mm becomes 1/16 in).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The division is not positive.</exception>
    public static LengthDisplay For(LengthUnit unit, Length division)
    {
        if (division.Unit == unit)
        {
            return new LengthDisplay(division);
        }

        var steps = unit == LengthUnit.Inch ? s_inchSteps : s_millimetreSteps;
        var step = Array.Find(steps, s => s >= division);
        return new LengthDisplay(division > steps[^1] ? steps[^1] : step);
    }

    /// <summary>The nearest multiple of the division, in its unit.</summary>
    public Length Rounded(Length length) => Steps((length.In(Unit).Value / Division.Value).ToNearestWhole());

    /// <summary>The nearest multiple of the division to a computed length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite: what is missing has no text here.</exception>
    public Length Rounded(double metres) => Rounded(Exactly(metres));

    /// <summary>A length with its unit, such as <c>47 5/8 in</c>.</summary>
    public string Text(Length length) => Write(Rounded(length), withUnit: true);

    /// <summary>A computed length with its unit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite: what is missing has no text here.</exception>
    public string Text(double metres) => Write(Rounded(metres), withUnit: true);

    /// <summary>A computed length without its unit, for a column whose head names the unit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite: what is missing has no text here.</exception>
    public string Number(double metres) => Write(Rounded(metres), withUnit: false);

    /// <summary>An uncertainty or a limit either way, such as <c>±3/32 in</c>; rounded up, so that a small one is never shown as none.</summary>
    /// <remarks>JCGM 100:2008, 7.2.6: it may be appropriate to round an uncertainty up rather than to the nearest digit.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or not finite.</exception>
    public string PlusMinus(double metres)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(metres);
        // A limit of exactly 3/32 in arrives as the nearest double and must not become 1/8 in.
        const double Slack = 1 - 1e-12;
        var steps = (Exactly(metres * Slack).In(Unit).Value / Division.Value).ToWholeAbove();
        return "±" + Write(Steps(steps), withUnit: true);
    }

    private static Length Exactly(double metres) => Length.FromFraction(Rational.OfExactly(metres) * 1000, LengthUnit.Millimetre);

    private Length Steps(BigInteger count) => Length.FromFraction(Division.Value * Rational.Of(count, 1), Unit);

    private string Write(Length rounded, bool withUnit)
    {
        var unit = withUnit ? $" {ExactLengthText.Symbol(Unit)}" : "";
        var value = rounded.Value;
        if (!FeetAndInches || !(rounded.Abs().Value >= 12))
        {
            return Number(value) + unit;
        }

        var magnitude = rounded.Abs().Value;
        var feet = magnitude.Numerator / (magnitude.Denominator * 12);
        var inches = magnitude - Rational.Of(feet * 12, 1);
        return $"{(value.Sign < 0 ? $"{ExactLengthText.Minus}" : "")}{feet} ft {Number(inches)} in";
    }

    private string Number(Rational value)
    {
        var below = Division.Value.Denominator;
        var byHalves = Unit == LengthUnit.Inch && below.IsPowerOfTwo;
        return !byHalves && ExactLengthText.DecimalsNeeded(below) is { } decimals
            ? ExactLengthText.Decimal(value, decimals)
            : ExactLengthText.Mixed(value);
    }

    /// <inheritdoc/>
    public bool Equals(LengthDisplay other) => Division == other.Division && Unit == other.Unit && FeetAndInches == other.FeetAndInches;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is LengthDisplay other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Division, Unit, FeetAndInches);

    /// <summary>The same division and unit.</summary>
    public static bool operator ==(LengthDisplay a, LengthDisplay b) => a.Equals(b);

    /// <summary>Another division or unit.</summary>
    public static bool operator !=(LengthDisplay a, LengthDisplay b) => !a.Equals(b);
}
