using System.Text.Json;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>Where a figure is printed, in a file.</summary>
internal static class SourceJson
{
    public static BookSource Read(Fields fields)
    {
        var source = new BookSource(
            fields.OptionalText("title"),
            fields.OptionalText("edition"),
            fields.OptionalText("page"),
            fields.OptionalText("figure")
        );
        fields.RefuseOthers();
        return source;
    }

    public static void Write(Utf8JsonWriter json, BookSource source)
    {
        if (source == BookSource.Unknown)
        {
            return;
        }

        json.WriteStartObject("source");
        json.WriteOptional("title", source.Title);
        json.WriteOptional("edition", source.Edition);
        json.WriteOptional("page", source.Page);
        json.WriteOptional("figure", source.Figure);
        json.WriteEndObject();
    }
}
