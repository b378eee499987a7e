using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>A printed tolerance in a file: one amount either way, or a group of plus and minus.</summary>
internal static class ToleranceJson
{
    public static PrintedTolerance? Read(Fields fields)
    {
        if (fields.Optional("tolerance") is not { } part)
        {
            return null;
        }

        var tolerance = part.Kind == JsonValueKind.Object ? ReadGroup(fields.Item(part)) : ReadEven(fields);
        if (tolerance?.Plus?.Si < 0 || tolerance?.Minus?.Si < 0)
        {
            fields.Faults.Add(part, Texts.Say("book.tolerance-json.a-tolerance-is-zero-or"));
            return null;
        }

        return tolerance;
    }

    public static void Write(Utf8JsonWriter json, PrintedTolerance? tolerance, LengthUnit units)
    {
        if (tolerance is null)
        {
            return;
        }

        if (tolerance.IsEven)
        {
            AmountPart.Write(json, "tolerance", tolerance.Plus, units);
            return;
        }

        json.WriteStartObject("tolerance");
        AmountPart.Write(json, "plus", tolerance.Plus, units);
        AmountPart.Write(json, "minus", tolerance.Minus, units);
        json.WriteEndObject();
    }

    private static PrintedTolerance? ReadEven(Fields fields) =>
        AmountPart.Optional(fields, "tolerance") is { } either ? new PrintedTolerance(either, either) : null;

    private static PrintedTolerance ReadGroup(Fields fields)
    {
        var tolerance = new PrintedTolerance(AmountPart.Optional(fields, "plus"), AmountPart.Optional(fields, "minus"));
        fields.RefuseOthers();
        return tolerance;
    }
}
