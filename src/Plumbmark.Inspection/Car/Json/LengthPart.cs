using System.Globalization;
using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>A length in a file: a number in the file's units, or a text as a person writes it.</summary>
public static class LengthPart
{
    /// <summary>More than this is no length on a frame nor in any survey: it is a slip.</summary>
    private static readonly Length s_longest = Length.FromMillimetres(100_000_000_000m);

    /// <summary>The length in a part, or null with the fault recorded.</summary>
    public static Length? Read(JsonPart part, LengthUnit units, LengthBound bound, Faults faults)
    {
        if (ReadAny(part, units, bound, faults) is not { } length)
        {
            return null;
        }

        var allowed = bound switch
        {
            LengthBound.Positive when length <= Length.Zero => Texts.Say("car.length-part.a-length-greater-than-zero"),
            LengthBound.NotNegative when length < Length.Zero => Texts.Say("car.length-part.a-length-of-zero-or"),
            _ when length.Abs() > s_longest => Texts.Say("car.length-part.a-length-of-at-most"),
            _ => null,
        };
        if (allowed is not null)
        {
            faults.Add(part, Texts.Say("car.length-part.found-is-needed-here", part.Describe(), allowed));
        }

        return allowed is null ? length : null;
    }

    /// <summary>Writes a length so that it reads back the same in a file of the given units; null is written as null.</summary>
    public static void Write(Utf8JsonWriter json, Length? length, LengthUnit units)
    {
        if (length is not { } value)
        {
            json.WriteNullValue();
            return;
        }

        if (value.Unit == units && IsJsonNumber(value))
        {
            json.WriteRawValue(value.AsTyped);
            return;
        }

        json.WriteStringValue(TextOf(value, units));
    }

    /// <summary>The length as typed when that still means the same in a file of the given units; otherwise with its unit spelled out.</summary>
    public static string TextOf(Length value, LengthUnit units)
    {
        var same = LengthText.Read(value.AsTyped, units, LengthSign.MayBeNegative) is LengthOutcome.Read read && read.Value == value;
        return same ? value.AsTyped : WithUnit(value);
    }

    private static Length? ReadAny(JsonPart part, LengthUnit units, LengthBound bound, Faults faults)
    {
        switch (part.Kind)
        {
            case JsonValueKind.Number when decimal.TryParse(part.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number):
                return Length.FromNumber(number, units);
            case JsonValueKind.String:
                var sign = bound == LengthBound.Any ? LengthSign.MayBeNegative : LengthSign.NeverNegative;
                return LengthText
                    .Read(part.Text, units, sign)
                    .Match<Length?>(
                        length => length,
                        refused =>
                        {
                            faults.Add(part, refused.Sentence);
                            return null;
                        }
                    );
            default:
                faults.Add(part, Texts.Say("car.length-part.found-a-length-is-needed", part.Describe()));
                return null;
        }
    }

    private static string WithUnit(Length value)
    {
        var typed = $"{value.AsTyped} {(value.Unit == LengthUnit.Inch ? "in" : "mm")}";
        return LengthText.Read(typed, value.Unit, LengthSign.MayBeNegative) is LengthOutcome.Read read && read.Value == value
            ? typed
            : value.ToString();
    }

    /// <summary>Whether it may stand as a number: it reads back as it was typed. "-0", "007" and a number of 40 digits would not.</summary>
    private static bool IsJsonNumber(Length value) =>
        decimal.TryParse(value.AsTyped, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
        && Length.FromNumber(number, value.Unit) is var again
        && again == value
        && again.AsTyped == value.AsTyped;
}
