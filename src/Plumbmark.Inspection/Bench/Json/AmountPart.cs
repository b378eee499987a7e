using System.Globalization;
using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench.Json;

/// <summary>A length, an angle, a rate or a load in a file.</summary>
internal static class AmountPart
{
    /// <summary>A number is a length in the file's units; a text may be any of the three.</summary>
    public static Amount? Required(Fields fields, string name) => Read(fields, fields.Required(name));

    public static Amount? Optional(Fields fields, string name) => Read(fields, fields.Optional(name));

    /// <summary>A number of degrees, or a text such as 7 deg 30'.</summary>
    public static Amount.OfAngle? Angle(Fields fields, JsonPart part)
    {
        var angle =
            part.Kind == JsonValueKind.Number
            && decimal.TryParse(part.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var degrees)
                ? new Amount.OfAngle(degrees)
            : part.Kind == JsonValueKind.String ? AmountText.ReadAngle(part.Text)
            : null;
        if (angle is null || Math.Abs(angle.Degrees) > 360)
        {
            fields.Faults.Add(part, Texts.Say("bench.amount-part.found-an-angle-is-needed", part.Describe()));
            return null;
        }

        return angle;
    }

    public static Load? RequiredLoad(Fields fields, string name)
    {
        if (fields.Required(name) is not { } part)
        {
            return null;
        }

        var load = part.Kind == JsonValueKind.String ? AmountText.ReadLoad(part.Text) : null;
        if (load is null)
        {
            fields.Faults.Add(part, Texts.Say("bench.amount-part.found-a-load-with-its", part.Describe()));
        }

        return load;
    }

    public static void Write(Utf8JsonWriter json, string name, Amount? amount, LengthUnit units)
    {
        if (amount is Amount.OfLength length)
        {
            json.WriteOptional(name, (Length?)length.Value, units);
        }
        else if (amount is not null)
        {
            json.WriteString(name, AmountText.Write(amount));
        }
    }

    private static Amount? Read(Fields fields, JsonPart? part)
    {
        if (part is null)
        {
            return null;
        }

        if (part.Kind == JsonValueKind.String && (AmountText.ReadAngle(part.Text) as Amount ?? AmountText.ReadRate(part.Text)) is { } other)
        {
            return other;
        }

        return fields.Length(part, LengthBound.Any) is { } length ? new Amount.OfLength(length) : null;
    }
}
