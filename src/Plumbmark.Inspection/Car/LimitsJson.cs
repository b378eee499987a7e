using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Car;

/// <summary>The limits in a car file.</summary>
internal static class LimitsJson
{
    public static readonly WordList<LimitSource> Sources = new(
        ("factory", LimitSource.Factory),
        ("practice", LimitSource.Practice),
        ("own", LimitSource.Own)
    );

    public static Limits Read(Fields fields)
    {
        var limits = new Limits(
            fields.OptionalLength("mirror", LengthBound.Positive),
            fields.OptionalLength("height", LengthBound.Positive),
            fields.OptionalLength("point", LengthBound.Positive),
            fields.OptionalWord("source", Sources) ?? LimitSource.Own,
            fields.OptionalText("note")
        );
        fields.RefuseOthers();
        return limits;
    }

    public static void Write(Utf8JsonWriter json, Limits limits, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteOptional("mirror", limits.Mirror, units);
        json.WriteOptional("height", limits.Height, units);
        json.WriteOptional("point", limits.Point, units);
        json.WriteString("source", Sources.WordFor(limits.Source));
        json.WriteOptional("note", limits.Note);
        json.WriteEndObject();
    }
}
