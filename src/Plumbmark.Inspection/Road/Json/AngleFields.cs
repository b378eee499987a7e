using System.Globalization;
using System.Text.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>Angles in a file: a number of degrees, or a text in degrees and minutes.</summary>
internal static class AngleFields
{
    /// <summary>No angle of a wheel, nor of a turn to measure castor by, goes beyond this.</summary>
    private const double MostDegrees = 60;

    public static Angle? OptionalAngle(this Fields fields, string name, bool mayBeNegative = true) =>
        fields.Optional(name) is { } part ? Read(fields, part, mayBeNegative) : null;

    public static Angle? RequiredAngle(this Fields fields, string name, bool mayBeNegative = true) =>
        fields.Required(name) is { } part ? Read(fields, part, mayBeNegative) : null;

    public static void WriteOptional(this Utf8JsonWriter json, string name, Angle? angle)
    {
        if (angle is { } value)
        {
            json.WriteString(name, value.AsTyped);
        }
    }

    public static Angle? Read(Fields fields, JsonPart part, bool mayBeNegative = true)
    {
        var angle = part.Kind switch
        {
            JsonValueKind.Number
                when decimal.TryParse(part.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var degrees)
                    && Math.Abs(degrees) < 1000 => Angle.FromDegrees(degrees),
            JsonValueKind.String when Angle.TryParse(part.Text, out var typed) => typed,
            _ => (Angle?)null,
        };
        if (angle is { } found && Math.Abs(found.Degrees) <= MostDegrees && (mayBeNegative || found.Minutes >= 0))
        {
            return angle;
        }

        var allowed = mayBeNegative
            ? Texts.Say("road.angle-fields.to", Texts.Number(MostDegrees, "0"))
            : Texts.Say("road.angle-fields.0-to", Texts.Number(MostDegrees, "0"));
        fields.Faults.Add(part, Texts.Say("road.angle-fields.found-an-angle-of-degrees", part.Describe(), allowed));
        return null;
    }
}
