using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>The rear suspension in a car file.</summary>
internal static class RearJson
{
    public static RearDrawing? Read(Fields fields)
    {
        var kind = fields.Required("kind");
        RearDrawing? rear = kind?.Text switch
        {
            "liveAxle" => new RearDrawing.LiveAxle(
                fields.OptionalPickUp("eye"),
                fields.OptionalLength("eyeToAxle", LengthBound.Any),
                fields.OptionalLength("axleAboveEye", LengthBound.Any),
                fields.OptionalLength("track", LengthBound.Positive)
            ),
            "trailingArms" => new RearDrawing.TrailingArms(
                fields.OptionalPickUp("inner"),
                fields.OptionalPickUp("outer"),
                fields.OptionalPlace("wheelCentre"),
                fields.OptionalAngle("camber"),
                fields.OptionalAngle("toeIn")
            ),
            _ => null,
        };
        if (rear is not null || kind is null)
        {
            fields.RefuseOthers();
        }
        else
        {
            fields.Faults.Add(kind, Texts.Say("road.rear-json.found-one-of-liveaxle-trailingarms", kind.Describe()));
        }

        return rear;
    }

    public static void Write(Utf8JsonWriter json, RearDrawing rear, LengthUnit units)
    {
        json.WriteStartObject();
        switch (rear)
        {
            case RearDrawing.LiveAxle axle:
                json.WriteString("kind", "liveAxle");
                json.WriteOptional("eye", axle.Eye, units);
                json.WriteOptional("eyeToAxle", axle.EyeToAxle, units);
                json.WriteOptional("axleAboveEye", axle.AxleAboveEye, units);
                json.WriteOptional("track", axle.Track, units);
                break;
            case RearDrawing.TrailingArms arms:
                json.WriteString("kind", "trailingArms");
                json.WriteOptional("inner", arms.Inner, units);
                json.WriteOptional("outer", arms.Outer, units);
                json.WriteOptional("wheelCentre", arms.WheelCentre, units);
                json.WriteOptional("camber", arms.Camber);
                json.WriteOptional("toeIn", arms.ToeIn);
                break;
        }

        json.WriteEndObject();
    }
}
