using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Press;

/// <summary>A section in a car file.</summary>
internal static class PressSectionJson
{
    public static PressSection? Read(Fields fields)
    {
        var shape = fields.RequiredWord("shape", PressWordLists.Shapes);
        var depth = fields.RequiredLength("depth", LengthBound.Positive);
        var (width, wall) = (fields.OptionalLength("width", LengthBound.Positive), fields.OptionalLength("wall", LengthBound.Positive));
        var (flange, foot) = (fields.OptionalLength("flange", LengthBound.Positive), fields.OptionalLength("foot", LengthBound.Positive));
        fields.RefuseOthers();
        if (shape is null || depth is null)
        {
            return null;
        }

        var section = new PressSection(shape.Value, depth.Value, width, wall, flange, foot);
        var faults = section.Faults();
        foreach (var fault in faults)
        {
            fields.Faults.Add(fields.Part, fault);
        }

        return faults.Count == 0 ? section : null;
    }

    public static void Write(Utf8JsonWriter json, PressSection section, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("shape", PressWordLists.Shapes.WordFor(section.Shape));
        json.WriteOptional("depth", section.Depth, units);
        json.WriteOptional("width", section.Width, units);
        json.WriteOptional("wall", section.Wall, units);
        json.WriteOptional("flange", section.Flange, units);
        json.WriteOptional("foot", section.Foot, units);
        json.WriteEndObject();
    }
}
