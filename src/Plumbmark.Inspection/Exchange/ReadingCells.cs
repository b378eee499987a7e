using System.Buffers;
using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Exchange;

/// <summary>The cells of one reading by field, out of the very fields of the car file: whatever a car file holds of a reading, a row holds too.</summary>
internal static class ReadingCells
{
    public static IReadOnlyDictionary<string, string?> Of(Reading reading, LengthUnit units)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes))
        {
            ReadingJson.Write(json, reading, units);
        }

        using var fields = JsonDocument.Parse(bytes.WrittenMemory);
        var cells = ColumnMatch.Fields.ToDictionary(f => f, _ => (string?)null, StringComparer.Ordinal);
        cells["unit"] = units == LengthUnit.Inch ? "in" : "mm";
        foreach (var field in fields.RootElement.EnumerateObject())
        {
            cells[field.Name] = field.Value.ValueKind == JsonValueKind.String ? field.Value.GetString() : field.Value.GetRawText();
        }

        return cells;
    }
}
