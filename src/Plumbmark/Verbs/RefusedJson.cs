using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Verbs;

/// <summary>A refused file as JSON: every fault with its place, for programs that call this one.</summary>
internal static class RefusedJson
{
    public static byte[] Bytes(IReadOnlyList<Fault> faults)
    {
        var bytes = new ArrayBufferWriter<byte>();
        var readable = new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        using (var json = new Utf8JsonWriter(bytes, readable))
        {
            json.WriteStartObject();
            json.WriteStartArray("refused");
            foreach (var fault in faults)
            {
                json.WriteStartObject();
                json.WriteString("path", fault.Path);
                json.WriteNumber("line", fault.Line);
                json.WriteNumber("column", fault.Column);
                json.WriteString("sentence", fault.Sentence);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }
}
