using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>The front suspension in a car file.</summary>
internal static class FrontJson
{
    public static FrontDrawing Read(Fields fields)
    {
        var trunnion = fields.Group("trunnion");
        var box = fields.Group("steeringBox");
        var front = new FrontDrawing
        {
            UpperFront = fields.OptionalPickUp("upperFront"),
            UpperRear = fields.OptionalPickUp("upperRear"),
            LowerFront = fields.OptionalPickUp("lowerFront"),
            LowerRear = fields.OptionalPickUp("lowerRear"),
            TrackRodInner = fields.OptionalPickUp("trackRodInner"),
            UpperJoint = fields.OptionalPlace("upperJoint"),
            LowerJoint = fields.OptionalPlace("lowerJoint"),
            LeverJoint = fields.OptionalPlace("leverJoint"),
            WheelCentre = fields.OptionalPlace("wheelCentre"),
            Camber = fields.OptionalAngle("camber"),
            ToeIn = fields.OptionalAngle("toeIn"),
            UpperArm = fields.OptionalWord("upperArm", RoadWords.Makes) ?? ArmMake.TwoHalves,
            LowerArm = fields.OptionalWord("lowerArm", RoadWords.Makes) ?? ArmMake.TwoHalves,
            TrunnionOffset = trunnion?.OptionalLength("offset", LengthBound.Any),
            TrunnionLead = trunnion?.OptionalLength("lead", LengthBound.Any),
            LoadedRadius = fields.OptionalLength("loadedRadius", LengthBound.Positive),
            Bump = fields.OptionalLength("bump", LengthBound.Positive),
            Rebound = fields.OptionalLength("rebound", LengthBound.Positive),
            SteeringBox = box is null ? null : ReadBox(box),
        };
        trunnion?.RefuseOthers();
        fields.RefuseOthers();
        return front;
    }

    public static void Write(Utf8JsonWriter json, FrontDrawing front, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteOptional("upperFront", front.UpperFront, units);
        json.WriteOptional("upperRear", front.UpperRear, units);
        json.WriteOptional("lowerFront", front.LowerFront, units);
        json.WriteOptional("lowerRear", front.LowerRear, units);
        json.WriteOptional("trackRodInner", front.TrackRodInner, units);
        json.WriteOptional("upperJoint", front.UpperJoint, units);
        json.WriteOptional("lowerJoint", front.LowerJoint, units);
        json.WriteOptional("leverJoint", front.LeverJoint, units);
        json.WriteOptional("wheelCentre", front.WheelCentre, units);
        json.WriteOptional("camber", front.Camber);
        json.WriteOptional("toeIn", front.ToeIn);
        json.WriteString("upperArm", RoadWords.Makes.WordFor(front.UpperArm));
        json.WriteString("lowerArm", RoadWords.Makes.WordFor(front.LowerArm));
        if (front.TrunnionOffset is not null || front.TrunnionLead is not null)
        {
            json.WriteStartObject("trunnion");
            json.WriteOptional("offset", front.TrunnionOffset, units);
            json.WriteOptional("lead", front.TrunnionLead, units);
            json.WriteEndObject();
        }

        json.WriteOptional("loadedRadius", front.LoadedRadius, units);
        json.WriteOptional("bump", front.Bump, units);
        json.WriteOptional("rebound", front.Rebound, units);
        WriteBox(json, front.SteeringBox, units);
        json.WriteEndObject();
    }

    private static SteeringBoxDrawing ReadBox(Fields fields)
    {
        var box = new SteeringBoxDrawing(
            fields.OptionalPlace("dropArmShaft"),
            fields.OptionalPlace("dropArmJoint"),
            fields.OptionalPlace("idlerShaft"),
            fields.OptionalPlace("idlerJoint"),
            fields.Truth("rodsOnArms")
        );
        fields.RefuseOthers();
        return box;
    }

    private static void WriteBox(Utf8JsonWriter json, SteeringBoxDrawing? box, LengthUnit units)
    {
        if (box is null)
        {
            return;
        }

        json.WriteStartObject("steeringBox");
        json.WriteOptional("dropArmShaft", box.DropArmShaft, units);
        json.WriteOptional("dropArmJoint", box.DropArmJoint, units);
        json.WriteOptional("idlerShaft", box.IdlerShaft, units);
        json.WriteOptional("idlerJoint", box.IdlerJoint, units);
        json.WriteWhenTrue("rodsOnArms", box.RodsOnArms);
        json.WriteEndObject();
    }
}
