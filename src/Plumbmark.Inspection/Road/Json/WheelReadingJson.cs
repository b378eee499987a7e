using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>A reading of the wheel check in a car file: the fields common to all; those of each kind are in the other half.</summary>
internal static partial class WheelReadingJson
{
    private static readonly (string Word, Func<Fields, string, WheelReading?> Read)[] s_kinds =
    [
        ("plumbLine", ReadPlumbLine),
        ("level", ReadLevel),
        ("stringGaps", ReadStringGaps),
        ("strings", ReadStrings),
        ("across", ReadAcross),
        ("swing", ReadSwing),
        ("rideHeight", ReadRideHeight),
        ("wheelbase", ReadWheelbase),
        ("pad", ReadPad),
    ];

    public static WheelReading? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var kind = fields.Required("kind");
        var known = Array.FindIndex(s_kinds, k => k.Word == kind?.Text);
        var reading = known < 0 ? null : s_kinds[known].Read(fields, id ?? "");
        var sigma = fields.OptionalLength("sigma", LengthBound.Positive);
        var sigmaAngle = fields.OptionalAngle("sigmaAngle", mayBeNegative: false);
        var halfTurn = fields.Truth("halfTurn");
        var note = fields.OptionalText("note");
        var withdrawn = fields.OptionalText("withdrawn");
        if (known >= 0)
        {
            fields.RefuseOthers();
        }
        else if (kind is not null)
        {
            fields.Faults.Add(
                kind,
                Texts.Say("road.wheel-reading-json.found-one-of-is-needed", kind.Describe(), string.Join(", ", s_kinds.Select(k => k.Word)))
            );
        }

        return reading is null || id is null
            ? null
            : reading with
            {
                Sigma = sigma,
                SigmaAngle = sigmaAngle,
                HalfTurn = halfTurn,
                Note = note,
                Withdrawn = withdrawn,
            };
    }

    public static void Write(Utf8JsonWriter json, WheelReading reading, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", reading.Id);
        WriteKind(json, reading, units);
        json.WriteOptional("sigma", reading.Sigma, units);
        json.WriteOptional("sigmaAngle", reading.SigmaAngle);
        json.WriteWhenTrue("halfTurn", reading.HalfTurn);
        json.WriteOptional("note", reading.Note);
        json.WriteOptional("withdrawn", reading.Withdrawn);
        json.WriteEndObject();
    }
}
