using System.Globalization;
using System.Text.RegularExpressions;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>Reads and writes angles, spring rates and loads as people write them: <c>7.5 deg</c>, <c>7 deg 30'</c>, <c>180 lbf/in</c>, <c>200 lb</c>.</summary>
public static partial class AmountText
{
    /// <summary>An angle, a rate or a length; null with a sentence when it is none of them.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="units">The unit of a bare number, which is a length.</param>
    /// <param name="refusal">What was found and what is allowed; null when it was read.</param>
    public static Amount? Read(string text, LengthUnit units, out string? refusal)
    {
        refusal = null;
        if (ReadAngle(text) is { } angle)
        {
            return angle;
        }

        if (ReadRate(text) is { } rate)
        {
            return rate;
        }

        var (length, sentence) = LengthText
            .Read(text, units, LengthSign.MayBeNegative)
            .Match<(Length?, string?)>(value => (value, null), refused => (null, refused.Sentence));
        refusal = sentence;
        return length is { } read ? new Amount.OfLength(read) : null;
    }

    /// <summary>An angle in degrees, or degrees and minutes; null when it is not one.</summary>
    public static Amount.OfAngle? ReadAngle(string text)
    {
        var match = AngleShape().Match(Within(text));
        if (!match.Success || Number(match.Groups["degrees"].Value) is not { } degrees)
        {
            return null;
        }

        var minutes = match.Groups["minutes"].Success ? Number(match.Groups["minutes"].Value) : 0;
        var negative = match.Groups["degrees"].Value[0] is '-' or '−';
        if (minutes is not { } m || m >= 60)
        {
            return null;
        }

        // 20' is a third of a degree without end; as many digits as are read back are kept.
        return new Amount.OfAngle(decimal.Round(degrees + ((negative ? -m : m) / 60), MostDecimals));
    }

    /// <summary>A spring rate; null when it is not one.</summary>
    public static Amount.OfRate? ReadRate(string text)
    {
        var match = RateShape().Match(Within(text));
        return match.Success && Number(match.Groups["number"].Value) is { } number
            ? new Amount.OfRate(number, match.Groups["inch"].Success ? RateUnit.PoundForcePerInch : RateUnit.NewtonPerMillimetre)
            : null;
    }

    /// <summary>A load with its unit; null when it is not one. A number without a unit is not guessed.</summary>
    public static Load? ReadLoad(string text)
    {
        var match = LoadShape().Match(Within(text));
        if (!match.Success || Number(match.Groups["number"].Value) is not { } number || number < 0)
        {
            return null;
        }

        var unit =
            match.Groups["pound"].Success ? LoadUnit.PoundForce
            : match.Groups["kilogram"].Success ? LoadUnit.KilogramForce
            : LoadUnit.Newton;
        return new Load(number, unit);
    }

    /// <summary>As it is written in a car file, so that it reads back the same.</summary>
    public static string Write(Amount amount) =>
        amount switch
        {
            Amount.OfAngle a => Texts.Say("bench.amount.deg", Plain(a.Degrees)),
            Amount.OfRate r => $"{Plain(r.Number)} {(r.Unit == RateUnit.PoundForcePerInch ? "lbf/in" : "N/mm")}",
            Amount.OfLength l => l.Value.AsTyped,
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>As it is written in a car file.</summary>
    public static string Write(Load load) =>
        $"{Plain(load.Number)} {load.Unit switch { LoadUnit.PoundForce => "lbf", LoadUnit.KilogramForce => "kgf", _ => "N" }}";

    // Nothing longer is one of these; so the patterns need no clock, which a busy machine would run out.
    private static string Within(string text) => text.Length <= LengthText.MostCharacters ? text : "";

    private static string Plain(decimal number) => number.ToString(CultureInfo.InvariantCulture);

    private static decimal? Number(string text) =>
        decimal.TryParse(
            text.Replace('−', '-').Replace(',', '.'),
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? number
            : null;

    private const int MostDecimals = 9;

    private const string Decimal = @"[-−]?(?:[0-9]{1,9}(?:[.,][0-9]{1,9})?|\.[0-9]{1,9})";

    [GeneratedRegex(
        @"^\s*(?<degrees>" + Decimal + @")\s*(?:deg|degrees?|°)(?:\s*(?<minutes>[0-9]{1,2}(?:\.[0-9]{1,6})?)\s*(?:'|′|min))?\s*$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase
    )]
    private static partial Regex AngleShape();

    [GeneratedRegex(
        @"^\s*(?<number>" + Decimal + @")\s*(?:(?<inch>lbf?\s*/\s*in)|N\s*/\s*mm)\s*$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase
    )]
    private static partial Regex RateShape();

    [GeneratedRegex(
        @"^\s*(?<number>" + Decimal + @")\s*(?:(?<pound>lbf?s?)|(?<kilogram>kgf?)|N)\s*$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase
    )]
    private static partial Regex LoadShape();
}
