using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>What a length may have been meant to be, judging by the text as it was typed.</summary>
public static class LengthSlips
{
    private static readonly (char One, char Other)[] s_lookalikes = [('6', '9'), ('3', '8'), ('1', '7')];

    /// <summary>The lengths that one slip of the pen, the eye or the unit would turn into this one, each once.</summary>
    public static IReadOnlyList<(BlunderKind Kind, Length Believed)> Of(Length typed)
    {
        var slips = new List<(BlunderKind Kind, Length Believed)>();
        foreach (var text in Swapped(typed.AsTyped))
        {
            Add(slips, typed, BlunderKind.DigitsSwapped, Read(text, typed.Unit));
        }

        foreach (var text in Misread(typed.AsTyped))
        {
            Add(slips, typed, BlunderKind.DigitMisread, Read(text, typed.Unit));
        }

        Add(slips, typed, BlunderKind.FractionOtherEnd, OtherEnd(typed));
        var other = typed.Unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
        Add(slips, typed, BlunderKind.UnitConfused, Length.FromFraction(typed.Value, other));
        return slips;
    }

    private static void Add(List<(BlunderKind Kind, Length Believed)> slips, Length typed, BlunderKind kind, Length? believed)
    {
        if (
            believed is { } length
            && length != typed
            && length > Length.Zero == typed > Length.Zero
            && !slips.Exists(s => s.Believed == length)
        )
        {
            slips.Add((kind, length));
        }
    }

    private static IEnumerable<string> Swapped(string text)
    {
        for (var i = 0; i + 1 < text.Length; i++)
        {
            if (char.IsAsciiDigit(text[i]) && char.IsAsciiDigit(text[i + 1]) && text[i] != text[i + 1])
            {
                yield return $"{text[..i]}{text[i + 1]}{text[i]}{text[(i + 2)..]}";
            }
        }
    }

    private static IEnumerable<string> Misread(string text) =>
        from i in Enumerable.Range(0, text.Length)
        from pair in s_lookalikes
        where text[i] == pair.One || text[i] == pair.Other
        select $"{text[..i]}{(text[i] == pair.One ? pair.Other : pair.One)}{text[(i + 1)..]}";

    private static Length? Read(string text, LengthUnit unit) =>
        LengthText.Read(text, unit, LengthSign.MayBeNegative).Match<Length?>(length => length, _ => null);

    // 47 3/8 counted from the far end of its inch: 47 5/8. Only inches are divided so that this happens.
    private static Length? OtherEnd(Length typed)
    {
        if (typed.Unit != LengthUnit.Inch || typed < Length.Zero)
        {
            return null;
        }

        var whole = Rational.Of((long)Math.Floor(typed.Value.ToDouble()), 1);
        var fraction = typed.Value - whole;
        return fraction.Sign > 0 ? Length.FromFraction(whole + 1 - fraction, LengthUnit.Inch) : null;
    }
}
