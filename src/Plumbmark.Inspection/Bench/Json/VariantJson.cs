using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench.Json;

/// <summary>A variant of a part in a car file.</summary>
internal static class VariantJson
{
    public static PartVariant? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var kind = fields.RequiredWord("kind", PartWordLists.Kinds);
        var variant = new PartVariant(
            id ?? "",
            kind ?? PartKind.Own,
            fields.OptionalText("name") ?? id ?? "",
            fields.Group("serials") is { } serials ? AppliesToJson.ReadRange(serials) : null,
            PartJson.Texts(fields, "numbers"),
            [.. fields.List("dimensions", p => ReadFigure(fields.Item(p)))]
        );
        fields.RefuseOthers();
        return id is null || kind is null ? null : variant;
    }

    public static void Write(Utf8JsonWriter json, PartVariant variant, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", variant.Id);
        json.WriteString("kind", PartWordLists.Kinds.WordFor(variant.Kind));
        json.WriteString("name", variant.Name);
        if (variant.Serials is { } serials)
        {
            json.WritePropertyName("serials");
            AppliesToJson.WriteRange(json, serials);
        }

        json.WriteList("numbers", variant.Numbers, json.WriteStringValue);
        json.WriteList("dimensions", variant.Figures, f => WriteFigure(json, f, units));
        json.WriteEndObject();
    }

    private static BookFigure? ReadFigure(Fields fields)
    {
        var dimension = fields.RequiredText("dimension");
        var nominal = AmountPart.Required(fields, "nominal");
        var tolerance = AmountPart.Optional(fields, "tolerance");
        var source = fields.OptionalWord("source", LimitsJson.Sources) ?? LimitSource.Factory;
        var note = fields.OptionalText("note");
        fields.RefuseOthers();
        if (tolerance is not null && nominal is not null && (tolerance.Quantity != nominal.Quantity || tolerance.Si <= 0))
        {
            fields.Faults.Add(fields.Optional("tolerance")!, Language.Texts.Say("bench.variant-json.a-tolerance-is-greater-than"));
            return null;
        }

        return dimension is null || nominal is null ? null : new BookFigure(dimension, nominal, tolerance, source, note);
    }

    private static void WriteFigure(Utf8JsonWriter json, BookFigure figure, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("dimension", figure.Dimension);
        AmountPart.Write(json, "nominal", figure.Nominal, units);
        AmountPart.Write(json, "tolerance", figure.Tolerance, units);
        json.WriteString("source", LimitsJson.Sources.WordFor(figure.Source));
        json.WriteOptional("note", figure.Note);
        json.WriteEndObject();
    }
}
