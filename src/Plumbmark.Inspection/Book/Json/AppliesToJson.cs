using System.Text.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>The cars that a page or figure is meant for, in a file.</summary>
internal static class AppliesToJson
{
    public static AppliesTo Read(Fields fields)
    {
        var applies = new AppliesTo(
            fields.List("serials", p => ReadRange(fields.Item(p))),
            fields.List("attributes", p => ReadAttribute(fields.Item(p)))
        );
        fields.RefuseOthers();
        return applies;
    }

    public static void Write(Utf8JsonWriter json, AppliesTo applies)
    {
        json.WriteStartObject("appliesTo");
        json.WriteList("serials", applies.Serials, r => WriteRange(json, r));
        json.WriteList("attributes", applies.Attributes, a => WriteAttribute(json, a));
        json.WriteEndObject();
    }

    public static CarAttribute? ReadAttribute(Fields fields)
    {
        var (name, value) = (fields.RequiredText("name"), fields.RequiredText("value"));
        fields.RefuseOthers();
        return name is null || value is null ? null : new CarAttribute(name, value);
    }

    public static void WriteAttribute(Utf8JsonWriter json, CarAttribute attribute)
    {
        json.WriteStartObject();
        json.WriteString("name", attribute.Name);
        json.WriteString("value", attribute.Value);
        json.WriteEndObject();
    }

    internal static SerialRange? ReadRange(Fields fields)
    {
        var before = fields.Faults.Count;
        var range = new SerialRange(ReadSerial(fields, "from"), ReadSerial(fields, "to"));
        fields.RefuseOthers();
        if (fields.Faults.Count > before)
        {
            return null;
        }

        if (Unsound(range) is { } sentence)
        {
            fields.Faults.Add(fields.Part, sentence);
            return null;
        }

        return range;
    }

    /// <summary>Why the ends of a range do not belong together; null when they do.</summary>
    internal static string? Unsound(SerialRange range) =>
        range.IsSound ? null
        : range.From!.Series != range.To!.Series ? Texts.Say("book.applies-to-json.found-from-to-the-letters", range.From, range.To)
        : range.From.Number == range.To.Number ? Texts.Say("book.applies-to-json.found-from-to-only-the", range.From, range.To)
        : Texts.Say("book.applies-to-json.found-from-to-the-first", range.From, range.To);

    private static SerialNumber? ReadSerial(Fields fields, string name)
    {
        if (fields.OptionalText(name) is not { } text)
        {
            return null;
        }

        if (SerialNumber.Read(text) is { } serial)
        {
            return serial;
        }

        fields.Faults.Add(
            fields.Optional(name)!,
            Texts.Say("book.applies-to-json.found", fields.Optional(name)!.Describe(), SerialNumber.Allowed)
        );
        return null;
    }

    internal static void WriteRange(Utf8JsonWriter json, SerialRange range)
    {
        json.WriteStartObject();
        json.WriteOptional("from", range.From?.AsWritten);
        json.WriteOptional("to", range.To?.AsWritten);
        json.WriteEndObject();
    }
}
