using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Car;

/// <summary>A tool in a car file.</summary>
internal static class ToolJson
{
    public static readonly WordList<ToolKind> Kinds = new(
        ("tape", ToolKind.Tape),
        ("rule", ToolKind.Rule),
        ("trammel", ToolKind.Trammel),
        ("level", ToolKind.Level),
        ("laser", ToolKind.Laser),
        ("caliper", ToolKind.Caliper),
        ("plumb", ToolKind.Plumb),
        ("micrometer", ToolKind.Micrometer),
        ("feeler", ToolKind.Feeler),
        ("dial", ToolKind.Dial),
        ("other", ToolKind.Other)
    );

    public static readonly WordList<TapeClass> Classes = new(("I", TapeClass.I), ("II", TapeClass.II), ("III", TapeClass.III));

    public static Tool? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var kind = fields.RequiredWord("kind", Kinds);
        var tool = new Tool(
            id ?? "",
            kind ?? ToolKind.Other,
            fields.OptionalWord("class", Classes),
            fields.OptionalLength("division", LengthBound.Positive),
            fields.OptionalLength("sigma", LengthBound.Positive)
        );
        fields.RefuseOthers();
        return id is null || kind is null ? null : tool;
    }

    public static void Write(Utf8JsonWriter json, Tool tool, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", tool.Id);
        json.WriteString("kind", Kinds.WordFor(tool.Kind));
        json.WriteOptional("class", tool.Class is { } c ? Classes.WordFor(c) : null);
        json.WriteOptional("division", tool.Division, units);
        json.WriteOptional("sigma", tool.Sigma, units);
        json.WriteEndObject();
    }
}
