using System.Buffers;
using System.Text.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Inspection.Floor;

/// <summary>The plan as <c>plumbmark plan --json</c> prints it; lengths in millimetres.</summary>
public static class FloorPlanJson
{
    /// <summary>The plan as one JSON document, UTF-8, with a line end.</summary>
    public static byte[] Bytes(MeasuringPlan plan)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, JsonWriting.Readable))
        {
            json.WriteStartObject();
            json.WriteString("sentence", plan.Sentence);
            json.WriteNumber("lengths", plan.Lengths);
            json.WriteNumber("heights", plan.Heights);
            json.WriteNumber("dropsPerPoint", plan.DropsPerPoint);
            json.WriteNumber("minutes", plan.Minutes);
            json.WriteNumber("settlesTo", Math.Round(plan.SettlesToMetres * 1000, 6));
            json.WriteBoolean("complete", plan.IsComplete);
            json.WriteStartArray("readings");
            foreach (var reading in plan.Readings)
            {
                FloorAnswerJson.WriteNext(json, reading);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }
}
