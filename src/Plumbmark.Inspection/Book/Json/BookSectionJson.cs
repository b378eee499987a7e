using System.Text.Json;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>The book section of a car file.</summary>
internal static class BookSectionJson
{
    public static BookSection Read(Fields fields)
    {
        var attributes = fields.List("attributes", p => AppliesToJson.ReadAttribute(fields.Item(p)));
        var pages = PartJson.Once(fields, "pages", PageJson.Read, p => p.Id);
        fields.RefuseOthers();
        return new BookSection(pages, attributes);
    }

    public static void Write(Utf8JsonWriter json, BookSection section)
    {
        json.WriteStartObject();
        json.WriteList("attributes", section.Attributes, a => AppliesToJson.WriteAttribute(json, a));
        json.WriteList("pages", section.Pages, p => PageJson.Write(json, p));
        json.WriteEndObject();
    }
}
