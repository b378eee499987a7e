namespace Plumbmark.Engine.Lengths;

internal enum LengthTokenKind
{
    Whole,
    Decimal,
    Fraction,
    Dash,
    Plus,
    Unit,
    End,
}

/// <summary>One piece of a typed length and where it stands; a value for numbers, a unit for units.</summary>
internal readonly record struct LengthToken(LengthTokenKind Kind, int Start, int End, Rational Value, TypedUnit? Unit)
{
    public bool IsNumber => Kind is LengthTokenKind.Whole or LengthTokenKind.Decimal or LengthTokenKind.Fraction;
}
