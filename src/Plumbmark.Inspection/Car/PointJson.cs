using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car;

/// <summary>A frame point in a car file.</summary>
internal static class PointJson
{
    public static readonly WordList<PointRole> Roles = new(
        ("suspension", PointRole.Suspension),
        ("spring", PointRole.Spring),
        ("steering", PointRole.Steering),
        ("engine", PointRole.Engine),
        ("body", PointRole.Body),
        ("other", PointRole.Other)
    );

    public static FramePoint? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var point = new FramePoint(
            id ?? "",
            fields.OptionalText("mirror"),
            fields.OptionalWord("role", Roles) ?? PointRole.Other,
            ReadPlace(fields, "sketch"),
            ReadPlace(fields, "nominal"),
            fields.OptionalLength("dropSigma"),
            fields.Truth("fixed"),
            fields.OptionalText("label"),
            ReadPlace(fields, "asymmetry"),
            fields.OptionalText("nominalDoubt"),
            fields.OptionalText("nominalSource"),
            fields.Truth("cannotDrop")
        )
        {
            Hole = fields.OptionalLength("hole", LengthBound.Positive),
            FixedSigma = fields.OptionalLength("fixedSigma", LengthBound.Positive),
        };
        fields.RefuseOthers();
        return id is null ? null : point;
    }

    public static void Write(Utf8JsonWriter json, FramePoint point, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", point.Id);
        json.WriteOptional("mirror", point.Mirror);
        if (point.Role != PointRole.Other)
        {
            json.WriteString("role", Roles.WordFor(point.Role));
        }

        WritePlace(json, "sketch", point.Sketch, units);
        WritePlace(json, "nominal", point.Nominal, units);
        json.WriteOptional("dropSigma", point.DropSigma, units);
        json.WriteWhenTrue("fixed", point.IsFixed);
        json.WriteOptional("fixedSigma", point.FixedSigma, units);
        json.WriteOptional("label", point.Label);
        WritePlace(json, "asymmetry", point.Asymmetry, units);
        json.WriteOptional("nominalDoubt", point.NominalDoubt);
        json.WriteOptional("nominalSource", point.NominalSource);
        json.WriteWhenTrue("cannotDrop", point.CannotDrop);
        json.WriteOptional("hole", point.Hole, units);
        json.WriteEndObject();
    }

    private static Place? ReadPlace(Fields fields, string name)
    {
        if (fields.Optional(name) is not { } part)
        {
            return null;
        }

        if (part.Kind != JsonValueKind.Array || part.Items.Count != 3)
        {
            var found = part.Kind == JsonValueKind.Array ? Texts.Say("car.point-json.a-list-of", part.Items.Count) : part.Describe();
            fields.Faults.Add(part, Texts.Say("car.point-json.found-a-list-of-three", found));
            return null;
        }

        var xyz = part.Items.Select(i => i.Kind == JsonValueKind.Null ? null : fields.Length(i, LengthBound.Any)).ToArray();
        return new Place(xyz[0], xyz[1], xyz[2]);
    }

    private static void WritePlace(Utf8JsonWriter json, string name, Place? place, LengthUnit units)
    {
        if (place is null)
        {
            return;
        }

        json.WriteStartArray(name);
        foreach (var value in new[] { place.X, place.Y, place.Z })
        {
            LengthPart.Write(json, value, units);
        }

        json.WriteEndArray();
    }
}
