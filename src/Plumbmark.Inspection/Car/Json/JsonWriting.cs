using System.Text.Encodings.Web;
using System.Text.Json;
using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>Writing optional fields: what is not known is left out, never written as zero or as an empty text.</summary>
internal static class JsonWriting
{
    /// <summary>Indented, with letters, primes and fractions readable. The file is never pasted into a page as it is.</summary>
    public static readonly JsonWriterOptions Readable = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static void WriteOptional(this Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null)
        {
            json.WriteString(name, text);
        }
    }

    public static void WriteOptional(this Utf8JsonWriter json, string name, Length? length, LengthUnit units)
    {
        if (length is not null)
        {
            json.WritePropertyName(name);
            LengthPart.Write(json, length, units);
        }
    }

    public static void WriteOptional(this Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } value)
        {
            json.WriteNumber(name, value);
        }
    }

    public static void WriteOptional<T>(this Utf8JsonWriter json, string name, WordList<T> words, T? value)
        where T : struct, Enum
    {
        if (value is { } known)
        {
            json.WriteString(name, words.WordFor(known));
        }
    }

    public static void WriteWhenTrue(this Utf8JsonWriter json, string name, bool value)
    {
        if (value)
        {
            json.WriteBoolean(name, true);
        }
    }

    public static void WriteList<T>(this Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<T> write)
    {
        if (items.Count == 0)
        {
            return;
        }

        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(item);
        }

        json.WriteEndArray();
    }
}
