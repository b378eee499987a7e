using static Plumbmark.Engine.Lengths.LengthOutcome;
using static Plumbmark.Engine.Lengths.LengthTokenKind;

namespace Plumbmark.Engine.Lengths;

/// <summary>
/// Puts the pieces of a typed length together:
/// <code>
/// length = [sign] amount [unit]  |  [sign] whole foot ["-"] amount [inch]
/// amount = whole | decimal | fraction | whole (space | "-") fraction
/// </code>
/// </summary>
internal sealed class LengthGrammar(
    string text,
    IReadOnlyList<LengthToken> tokens,
    LengthRefusals refusals,
    LengthUnit defaultUnit,
    LengthSign sign
)
{
    private int _at;

    private LengthToken Next => tokens[_at];

    /// <summary>A number with its place; <c>Fraction</c> is where its fraction stands, if it has one.</summary>
    private readonly record struct Amount(Rational Value, int Start, int End, bool IsWhole, bool HasFraction);

    public LengthOutcome Read()
    {
        var isNegative = Next.Kind == Dash;
        if (Next.Kind is Dash or Plus)
        {
            if (sign == LengthSign.NeverNegative)
            {
                return refusals.Sign(Next.Start, Next.End);
            }

            _at++;
        }

        if (ReadAmount(out var amount) is { } noAmount)
        {
            return noAmount;
        }

        var isTyped = Next.Kind == Unit;
        var unit = isTyped ? tokens[_at++].Unit! : LengthUnitWords.ForBareNumber(defaultUnit);
        var value = amount.Value * unit.Factor;
        var refused = CheckFraction(amount, unit, isTyped);
        if (refused is null && isTyped && unit.IsFoot && Next.Kind != End)
        {
            refused = ReadInchesBehind(amount, ref value);
        }

        refused ??= CheckEnd(unit);
        return refused is not null ? refused : new Read(Length.FromText(isNegative ? -value : value, unit.KeptIn, text));
    }

    private Refused? ReadAmount(out Amount amount)
    {
        var first = Next;
        amount = new Amount(first.Value, first.Start, first.End, first.Kind == Whole, first.Kind == Fraction);
        if (!first.IsNumber)
        {
            return refusals.NoNumber(first.Start, first.End);
        }

        _at++;
        var hasDash = Next.Kind == Dash && tokens[_at + 1].Kind == Fraction;
        var fraction = hasDash ? tokens[_at + 1] : Next;
        if (first.Kind != Whole || fraction.Kind != Fraction)
        {
            return null;
        }

        if (hasDash && (Next.Start != first.End || fraction.Start != Next.End))
        {
            return refusals.SpacedDash(Next.Start, Next.End);
        }

        _at += hasDash ? 2 : 1;
        amount = new Amount(first.Value + fraction.Value, first.Start, fraction.End, IsWhole: false, HasFraction: true);
        return null;
    }

    private Refused? CheckFraction(Amount amount, TypedUnit unit, bool isTyped)
    {
        var isAllowed = !amount.HasFraction || unit.IsDividedInFractions || (amount.Value * 2).Denominator.IsOne;
        return isAllowed ? null : refusals.FractionOf(amount.Start, amount.End, unit, isTyped);
    }

    private Refused? ReadInchesBehind(Amount feet, ref Rational value)
    {
        if (Next.Kind == Unit)
        {
            return null; // two units in a row: told by CheckEnd
        }

        if (Next.Kind == Dash)
        {
            _at++; // 5'-1 3/16"
        }

        if (ReadAmount(out var inches) is { } noAmount)
        {
            return noAmount;
        }

        if (Next.Kind == Unit && !Next.Unit!.IsInch)
        {
            return refusals.OtherUnitAfterFeet(Next.Start, Next.End);
        }

        _at += Next.Kind == Unit ? 1 : 0;
        if (!feet.IsWhole)
        {
            return refusals.BrokenFeet(feet.Start, feet.End);
        }

        value += inches.Value;
        return inches.Value >= 12 ? refusals.TwelveInches(inches.Start, inches.End) : null;
    }

    private Refused? CheckEnd(TypedUnit unit)
    {
        var last = _at == 0 ? default : tokens[_at - 1];
        return (Next.Kind, last.Kind) switch
        {
            (End, _) => null,
            (Unit, _) => refusals.SecondUnit(Next.Start, Next.End, unit),
            (Fraction, Fraction) => refusals.SecondFraction(Next.Start, Next.End),
            (Fraction, LengthTokenKind.Decimal) => refusals.DecimalAndFraction(last.Start, Next.End),
            (Whole or LengthTokenKind.Decimal or Fraction, _) => refusals.SecondNumber(Next.Start, Next.End),
            _ => refusals.NotExpected(Next.Start, Next.End),
        };
    }
}
