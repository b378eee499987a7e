using System.Buffers;
using System.Text.Json;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Book.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Press;
using Plumbmark.Inspection.Road.Json;

namespace Plumbmark.Inspection.Car;

/// <summary>Writes a car file: everything known, every length as it was typed, and the same bytes for the same car.</summary>
public static class CarFileWriter
{
    /// <summary>The file's bytes, UTF-8 with a line end at the end.</summary>
    public static byte[] Write(CarFile file)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, JsonWriting.Readable))
        {
            WriteWhole(json, file);
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    private static void WriteWhole(Utf8JsonWriter json, CarFile file)
    {
        json.WriteStartObject();
        json.WriteString("format", CarFile.Format);
        json.WriteNumber("version", CarFile.Version);
        json.WriteString("units", CarFileReader.Units.WordFor(file.Units));
        json.WriteStartObject("car");
        json.WriteString("name", file.Car.Name);
        json.WriteOptional("serial", file.Car.Serial);
        json.WriteOptional("note", file.Car.Note);
        json.WriteEndObject();
        json.WriteList("tools", file.Tools, tool => ToolJson.Write(json, tool, file.Units));
        json.WriteStartObject("frame");
        json.WriteList("points", file.Frame.Points, point => PointJson.Write(json, point, file.Units));
        if (file.Frame.Limits is { } limits)
        {
            json.WritePropertyName("limits");
            LimitsJson.Write(json, limits, file.Units);
        }

        json.WriteEndObject();
        json.WriteList("readings", file.Readings, reading => ReadingJson.Write(json, reading, file.Units));
        if (file.Level is { } level)
        {
            json.WritePropertyName("level");
            LevelJson.Write(json, level, file.Units);
        }

        if (file.Road is { } road)
        {
            json.WritePropertyName("road");
            RoadJson.Write(json, road, file.Units);
        }

        json.WriteList("press", file.Press, job => PressJson.Write(json, job, file.Units));
        if (!file.Parts.IsEmpty)
        {
            json.WritePropertyName("parts");
            PartsJson.Write(json, file.Parts, file.Units);
        }

        if (!file.Book.IsEmpty)
        {
            json.WritePropertyName("book");
            BookSectionJson.Write(json, file.Book);
        }

        if (file.Photos.Count > 0)
        {
            json.WriteList("photos", file.Photos, photo => PhotoOfJson.Write(json, photo));
        }

        json.WriteEndObject();
    }
}
