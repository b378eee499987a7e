using System.Globalization;
using System.Text.RegularExpressions;
using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>What a printed length may have been before a draughtsman's, a compositor's or a scanner's slip, likeliest first.</summary>
internal static partial class Slips
{
    // Own list, from the shapes of the digits; no published source.
    private static readonly (char A, char B)[] s_lookAlikes =
    [
        ('6', '9'),
        ('3', '8'),
        ('1', '7'),
        ('5', '6'),
        ('0', '8'),
        ('0', '6'),
        ('5', '3'),
    ];
    private static readonly int[] s_divisions = [2, 4, 8, 16, 32, 64];

    public static IEnumerable<(SlipKind Kind, Length Value)> Of(Length printed)
    {
        var text = printed.AsTyped;
        return LookAlikes(text)
            .Select(t => (SlipKind.LookAlikeDigit, t))
            .Concat(FractionLost(text).Select(t => (SlipKind.FractionLost, t)))
            .Concat(Swapped(text).Select(t => (SlipKind.DigitsSwapped, t)))
            .Concat(OtherEnd(text).Select(t => (SlipKind.OtherEnd, t)))
            .Concat(OtherDivision(text).Select(t => (SlipKind.OtherDivision, t)))
            .SelectMany(edit => Read(edit.t, printed.Unit).Select(value => (Kind: edit.Item1, Value: value)))
            .Concat(Steps(printed).Select(v => (Kind: SlipKind.WholeStep, Value: v)))
            .Concat(new[] { printed * 10, printed / 10 }.Select(v => (Kind: SlipKind.PointMoved, Value: v)))
            .Concat(new[] { printed * 2, printed / 2 }.Select(v => (Kind: SlipKind.HalfOrDouble, Value: v)))
            .Where(s => s.Value != printed)
            .DistinctBy(s => s.Value);
    }

    /// <summary>The slips that turn a figure into what it should be.</summary>
    public static IEnumerable<LikelySlip> Explaining(string dimension, Length printed, Func<double, bool> isRightMetres) =>
        Of(printed).Where(s => isRightMetres(s.Value.Metres)).Select(s => new LikelySlip(dimension, printed, s.Value, s.Kind));

    private static IEnumerable<string> LookAlikes(string text) =>
        from i in Enumerable.Range(0, text.Length)
        from pair in s_lookAlikes
        where text[i] == pair.A || text[i] == pair.B
        select $"{text[..i]}{(text[i] == pair.A ? pair.B : pair.A)}{text[(i + 1)..]}";

    private static IEnumerable<string> FractionLost(string text)
    {
        if (text.All(char.IsAsciiDigit) && text.EndsWith('8'))
        {
            yield return text.Length == 1 ? "1/8" : $"{text[..^1]} 1/8";
        }
    }

    private static IEnumerable<string> Swapped(string text) =>
        from i in Enumerable.Range(0, Math.Max(text.Length - 1, 0))
        where char.IsAsciiDigit(text[i]) && char.IsAsciiDigit(text[i + 1]) && text[i] != text[i + 1]
        select $"{text[..i]}{text[i + 1]}{text[i]}{text[(i + 2)..]}";

    private static IEnumerable<string> OtherEnd(string text) =>
        Fraction(text) is { } f && f.Above < f.Below ? [f.Replaced(f.Below - f.Above, f.Below)] : [];

    private static IEnumerable<string> OtherDivision(string text) =>
        Fraction(text) is { } f ? s_divisions.Where(d => d != f.Below && d > f.Above).Select(d => f.Replaced(f.Above, d)) : [];

    private static IEnumerable<Length> Steps(Length printed)
    {
        foreach (var step in printed.Unit == LengthUnit.Inch ? new[] { 1, 10 } : [10, 100])
        {
            var whole = Length.FromFraction(step, printed.Unit);
            yield return printed + whole;
            yield return printed - whole;
        }
    }

    private static IEnumerable<Length> Read(string text, LengthUnit units) =>
        LengthText.Read(text, units, LengthSign.MayBeNegative) is LengthOutcome.Read read ? [read.Value] : [];

    private static FractionInText? Fraction(string text)
    {
        var match = FractionShape().Match(text);
        return match.Success ? new FractionInText(text, match) : null;
    }

    private sealed class FractionInText(string text, Match match)
    {
        public int Above { get; } = int.Parse(match.Groups["above"].Value, CultureInfo.InvariantCulture);

        public int Below { get; } = int.Parse(match.Groups["below"].Value, CultureInfo.InvariantCulture);

        public string Replaced(int above, int below) => $"{text[..match.Index]}{above}/{below}{text[(match.Index + match.Length)..]}";
    }

    [GeneratedRegex(@"(?<above>[0-9]{1,3})\s*/\s*(?<below>[0-9]{1,3})", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant)]
    private static partial Regex FractionShape();
}
