using System.Text.Json;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Car;

/// <summary>Photos of points and readings in a car file: names only.</summary>
internal static class PhotoOfJson
{
    public static PhotoOf? Read(Fields fields)
    {
        var photo = fields.RequiredText("photo");
        var point = fields.OptionalText("point");
        var reading = fields.OptionalText("reading");
        fields.RefuseOthers();
        return photo is null ? null : new PhotoOf(photo, point, reading);
    }

    public static void Write(Utf8JsonWriter json, PhotoOf photo)
    {
        json.WriteStartObject();
        json.WriteString("photo", photo.Photo);
        json.WriteOptional("point", photo.Point);
        json.WriteOptional("reading", photo.Reading);
        json.WriteEndObject();
    }
}
