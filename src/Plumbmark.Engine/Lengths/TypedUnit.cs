namespace Plumbmark.Engine.Lengths;

/// <summary>A unit as typed: its short name, the unit it is kept in, and how many of those it is.</summary>
internal sealed record TypedUnit(string Symbol, LengthUnit KeptIn, Rational Factor)
{
    public bool IsFoot => KeptIn == LengthUnit.Inch && Factor == 12;

    public bool IsInch => KeptIn == LengthUnit.Inch && Factor == 1;

    /// <summary>Rules in inches and feet are divided in fractions; metric ones, and thou, at most in halves.</summary>
    public bool IsDividedInFractions => IsInch || IsFoot;
}
