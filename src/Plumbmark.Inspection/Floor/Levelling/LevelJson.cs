using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Floor.Levelling;

/// <summary>The levelling in a car file.</summary>
internal static class LevelJson
{
    public static LevelSection Read(Fields fields)
    {
        var section = new LevelSection(
            fields.List("stands", part => ReadStand(new Fields(part, fields.Faults, fields.Units))),
            fields.List("floor", part => ReadFloor(new Fields(part, fields.Faults, fields.Units))),
            fields.Group("plumb") is { } plumb ? ReadPlumb(plumb) : null
        );
        fields.RefuseOthers();
        return section;
    }

    public static void Write(Utf8JsonWriter json, LevelSection section, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteList("stands", section.Stands, stand => WriteStand(json, stand, units));
        json.WriteList("floor", section.Floor, place => WriteFloor(json, place, units));
        if (section.Plumb is { } plumb)
        {
            json.WriteStartObject("plumb");
            json.WriteOptional("length", plumb.Length, units);
            json.WriteOptional("gap", plumb.Gap, units);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static StandReading? ReadStand(Fields fields)
    {
        var id = fields.RequiredText("id");
        var x = fields.RequiredLength("x", LengthBound.Any);
        var y = fields.RequiredLength("y", LengthBound.Any);
        var height = fields.RequiredLength("height", LengthBound.Any);
        var should = fields.OptionalLength("should", LengthBound.Any);
        fields.RefuseOthers();
        return id is null || x is null || y is null || height is null ? null : new StandReading(id, x.Value, y.Value, height.Value, should);
    }

    private static FloorHeight? ReadFloor(Fields fields)
    {
        var x = fields.RequiredLength("x", LengthBound.Any);
        var y = fields.RequiredLength("y", LengthBound.Any);
        var height = fields.RequiredLength("height", LengthBound.Any);
        fields.RefuseOthers();
        return x is null || y is null || height is null ? null : new FloorHeight(x.Value, y.Value, height.Value);
    }

    private static PlumbCheck? ReadPlumb(Fields fields)
    {
        var length = fields.RequiredLength("length", LengthBound.Positive);
        var gap = fields.RequiredLength("gap", LengthBound.Any);
        fields.RefuseOthers();
        return length is null || gap is null ? null : new PlumbCheck(length.Value, gap.Value);
    }

    private static void WriteStand(Utf8JsonWriter json, StandReading stand, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", stand.Id);
        json.WriteOptional("x", stand.X, units);
        json.WriteOptional("y", stand.Y, units);
        json.WriteOptional("height", stand.Height, units);
        json.WriteOptional("should", stand.Should, units);
        json.WriteEndObject();
    }

    private static void WriteFloor(Utf8JsonWriter json, FloorHeight place, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteOptional("x", place.X, units);
        json.WriteOptional("y", place.Y, units);
        json.WriteOptional("height", place.Height, units);
        json.WriteEndObject();
    }
}
