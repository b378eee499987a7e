using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

internal static partial class WheelReadingJson
{
    private static WheelReading? ReadPlumbLine(Fields fields, string id)
    {
        var wheel = fields.RequiredWord("wheel", RoadWords.Wheels);
        var top = fields.RequiredLength("top");
        var bottom = fields.RequiredLength("bottom");
        var span = fields.RequiredLength("span", LengthBound.Positive);
        RefuseSteep(fields, top, bottom, span);
        return wheel is { } w && top is { } t && bottom is { } b && span is { } s ? new WheelReading.PlumbLine(id, w, t, b, s) : null;
    }

    private static WheelReading? ReadLevel(Fields fields, string id)
    {
        var wheel = fields.RequiredWord("wheel", RoadWords.Wheels);
        var camber = fields.RequiredAngle("camber");
        return wheel is { } w && camber is { } c ? new WheelReading.Level(id, w, c) : null;
    }

    private static WheelReading? ReadStringGaps(Fields fields, string id)
    {
        var wheel = fields.RequiredWord("wheel", RoadWords.Wheels);
        var front = fields.RequiredLength("front");
        var rear = fields.RequiredLength("rear");
        var span = fields.RequiredLength("span", LengthBound.Positive);
        var hub = fields.OptionalLength("hub");
        RefuseSteep(fields, front, rear, span);
        return wheel is { } w && front is { } f && rear is { } r && span is { } s ? new WheelReading.StringGaps(id, w, f, r, s, hub) : null;
    }

    private static WheelReading? ReadStrings(Fields fields, string id)
    {
        var ahead = fields.RequiredLength("ahead", LengthBound.Positive);
        var behind = fields.RequiredLength("behind", LengthBound.Positive);
        var between = fields.RequiredLength("between", LengthBound.Positive);
        return ahead is { } a && behind is { } b && between is { } l ? new WheelReading.Strings(id, a, b, l) : null;
    }

    private static WheelReading? ReadAcross(Fields fields, string id)
    {
        var axle = fields.RequiredWord("axle", RoadWords.Axles);
        var ahead = fields.RequiredLength("ahead", LengthBound.Positive);
        var behind = fields.RequiredLength("behind", LengthBound.Positive);
        var diameter = fields.RequiredLength("diameter", LengthBound.Positive);
        var atTread = fields.Truth("atTread");
        RefuseSteep(fields, ahead, behind, diameter);
        return axle is { } x && ahead is { } a && behind is { } b && diameter is { } d
            ? new WheelReading.Across(id, x, a, b, d, atTread)
            : null;
    }

    private static WheelReading? ReadSwing(Fields fields, string id)
    {
        var wheel = fields.RequiredWord("wheel", RoadWords.Wheels);
        var ahead = fields.RequiredAngle("ahead");
        var outTurn = fields.RequiredAngle("outTurn", mayBeNegative: false);
        var outCamber = fields.RequiredAngle("outCamber");
        var inTurn = fields.RequiredAngle("inTurn", mayBeNegative: false);
        var inCamber = fields.RequiredAngle("inCamber");
        if (wheel is WheelPlace.RearLeft or WheelPlace.RearRight)
        {
            fields.Faults.Add(fields.Part, Texts.Say("road.wheel-reading-json--kinds.castor-is-read-at-a"));
        }

        if (outTurn is { Minutes: 0 } || inTurn is { Minutes: 0 })
        {
            fields.Faults.Add(fields.Part, Texts.Say("road.wheel-reading-json--kinds.the-wheel-was-not-turned"));
        }

        return wheel is { } w && ahead is { } a && outTurn is { } ot && outCamber is { } oc && inTurn is { } it && inCamber is { } ic
            ? new WheelReading.Swing(id, w, a, ot, oc, it, ic)
            : null;
    }

    private static WheelReading? ReadRideHeight(Fields fields, string id)
    {
        var wheel = fields.RequiredWord("wheel", RoadWords.Wheels);
        var value = fields.RequiredLength("value", LengthBound.Any);
        return wheel is { } w && value is { } v ? new WheelReading.RideHeight(id, w, v) : null;
    }

    private static WheelReading? ReadWheelbase(Fields fields, string id)
    {
        var side = fields.RequiredWord("side", RoadWords.Sides);
        var value = fields.RequiredLength("value", LengthBound.Positive);
        return side is { } s && value is { } v ? new WheelReading.Wheelbase(id, s, v) : null;
    }

    private static WheelReading? ReadPad(Fields fields, string id)
    {
        var wheel = fields.RequiredWord("wheel", RoadWords.Wheels);
        var value = fields.RequiredLength("value", LengthBound.Any);
        return wheel is { } w && value is { } v ? new WheelReading.Pad(id, w, v) : null;
    }

    // A wheel that leans or points by more than 30 degrees is a slip of the pen: the difference cannot be half the span or more.
    private static void RefuseSteep(Fields fields, Length? one, Length? other, Length? span)
    {
        if (one is { } a && other is { } b && span is { } s && (a - b).Abs() * 2 >= s)
        {
            fields.Faults.Add(
                fields.Part,
                Texts.Say("road.wheel-reading-json--kinds.and-differ-by-half-of", a.AsTyped, b.AsTyped, s.AsTyped)
            );
        }
    }

    private static void WriteKind(Utf8JsonWriter json, WheelReading reading, LengthUnit units)
    {
        switch (reading)
        {
            case WheelReading.PlumbLine r:
                WriteAt(json, "plumbLine", r.Wheel);
                WriteLengths(json, units, ("top", r.Top), ("bottom", r.Bottom), ("span", r.Span));
                break;
            case WheelReading.Level r:
                WriteAt(json, "level", r.Wheel);
                json.WriteOptional("camber", (Angle?)r.Camber);
                break;
            case WheelReading.StringGaps r:
                WriteAt(json, "stringGaps", r.Wheel);
                WriteLengths(json, units, ("front", r.Front), ("rear", r.Rear), ("span", r.Span), ("hub", r.Hub));
                break;
            case WheelReading.Strings r:
                json.WriteString("kind", "strings");
                WriteLengths(json, units, ("ahead", r.Ahead), ("behind", r.Behind), ("between", r.Between));
                break;
            case WheelReading.Across r:
                json.WriteString("kind", "across");
                json.WriteString("axle", RoadWords.Axles.WordFor(r.Axle));
                WriteLengths(json, units, ("ahead", r.Ahead), ("behind", r.Behind), ("diameter", r.Diameter));
                json.WriteWhenTrue("atTread", r.AtTread);
                break;
            case WheelReading.Swing r:
                WriteAt(json, "swing", r.Wheel);
                json.WriteOptional("ahead", (Angle?)r.Ahead);
                json.WriteOptional("outTurn", (Angle?)r.OutTurn);
                json.WriteOptional("outCamber", (Angle?)r.OutCamber);
                json.WriteOptional("inTurn", (Angle?)r.InTurn);
                json.WriteOptional("inCamber", (Angle?)r.InCamber);
                break;
            case WheelReading.RideHeight r:
                WriteAt(json, "rideHeight", r.Wheel);
                WriteLengths(json, units, ("value", r.Value));
                break;
            case WheelReading.Wheelbase r:
                json.WriteString("kind", "wheelbase");
                json.WriteString("side", RoadWords.Sides.WordFor(r.Side));
                WriteLengths(json, units, ("value", r.Value));
                break;
            case WheelReading.Pad r:
                WriteAt(json, "pad", r.Wheel);
                WriteLengths(json, units, ("value", r.Value));
                break;
        }
    }

    private static void WriteAt(Utf8JsonWriter json, string kind, WheelPlace wheel)
    {
        json.WriteString("kind", kind);
        json.WriteString("wheel", RoadWords.Wheels.WordFor(wheel));
    }

    private static void WriteLengths(Utf8JsonWriter json, LengthUnit units, params ReadOnlySpan<(string Name, Length? Value)> lengths)
    {
        foreach (var (name, value) in lengths)
        {
            json.WriteOptional(name, value, units);
        }
    }
}
