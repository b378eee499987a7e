using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Press;

/// <summary>Profiles, twist readings, set-up and limits of a press job in a car file.</summary>
internal static class PressMeasureJson
{
    private const double LargestLever = 100;
    private const double LargestStrain = 0.2; // beyond it nothing here holds
    private const int MostBites = 50;

    public static ProfileLine? ReadLine(Fields fields)
    {
        var name = fields.RequiredText("name");
        var (plane, edge) = (fields.RequiredWord("plane", PressWordLists.Planes), fields.RequiredWord("from", PressWordLists.Edges));
        var gaps = fields.List("gaps", part => ReadGap(fields.Item(part)));
        fields.RefuseOthers();
        return name is null || plane is null || edge is null ? null : new ProfileLine(name, plane.Value, edge.Value, gaps);
    }

    public static void WriteLine(Utf8JsonWriter json, ProfileLine line, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("name", line.Name);
        json.WriteString("plane", PressWordLists.Planes.WordFor(line.Plane));
        json.WriteString("from", PressWordLists.Edges.WordFor(line.Edge));
        json.WriteList(
            "gaps",
            line.Gaps,
            gap =>
            {
                json.WriteStartObject();
                json.WriteOptional("at", gap.At, units);
                json.WriteOptional("gap", gap.Gap, units);
                json.WriteEndObject();
            }
        );
        json.WriteEndObject();
    }

    public static WindingReading? ReadWinding(Fields fields)
    {
        var (at, left) = (fields.RequiredLength("at", LengthBound.Any), fields.RequiredLength("left", LengthBound.Any));
        var (right, width) = (fields.RequiredLength("right", LengthBound.Any), fields.RequiredLength("width", LengthBound.Positive));
        fields.RefuseOthers();
        return at is { } a && left is { } l && right is { } r && width is { } w ? new WindingReading(a, l, r, w) : null;
    }

    public static void WriteWinding(Utf8JsonWriter json, WindingReading reading, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteOptional("at", reading.At, units);
        json.WriteOptional("left", reading.Left, units);
        json.WriteOptional("right", reading.Right, units);
        json.WriteOptional("width", reading.Width, units);
        json.WriteEndObject();
    }

    public static PressSetUp? ReadSetUp(Fields fields)
    {
        var (left, right) = (
            fields.RequiredLength("leftArm", LengthBound.Positive),
            fields.RequiredLength("rightArm", LengthBound.Positive)
        );
        var ram = fields.OptionalLength("ram", LengthBound.Any);
        var lever = fields.OptionalNumber("lever", 1 / LargestLever, LargestLever) ?? 1;
        var at = fields.OptionalWord("travelAt", PressWordLists.TravelPlaces);
        fields.RefuseOthers();
        return left is { } l && right is { } r ? new PressSetUp(l, r, ram, lever) { TravelAtPart = at == TravelPlace.Part } : null;
    }

    public static void WriteSetUp(Utf8JsonWriter json, PressSetUp setUp, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteOptional("leftArm", setUp.LeftArm, units);
        json.WriteOptional("rightArm", setUp.RightArm, units);
        json.WriteOptional("ram", setUp.Ram, units);
        if (setUp.Lever is < 1 or > 1)
        {
            json.WriteNumber("lever", setUp.Lever);
        }

        if (setUp.TravelAtPart)
        {
            json.WriteString("travelAt", PressWordLists.TravelPlaces.WordFor(TravelPlace.Part));
        }

        json.WriteEndObject();
    }

    public static PressLimits ReadLimits(Fields fields)
    {
        var usual = PressLimits.Usual;
        var limits = new PressLimits(
            fields.OptionalLength("straight", LengthBound.Positive),
            fields.OptionalWord("source", LimitsJson.Sources) ?? LimitSource.Own,
            fields.OptionalNumber("strain", 0, LargestStrain) ?? usual.Strain,
            (int)(fields.OptionalNumber("bites", 1, MostBites) ?? usual.Bites),
            fields.OptionalLength("reading", LengthBound.Positive) ?? usual.Reading,
            fields.OptionalLength("travel", LengthBound.Positive) ?? usual.Travel
        );
        fields.RefuseOthers();
        return limits;
    }

    public static void WriteLimits(Utf8JsonWriter json, PressLimits limits, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteOptional("straight", limits.Straight, units);
        json.WriteString("source", LimitsJson.Sources.WordFor(limits.Source));
        json.WriteNumber("strain", limits.Strain);
        json.WriteNumber("bites", limits.Bites);
        json.WriteOptional("reading", limits.Reading, units);
        json.WriteOptional("travel", limits.Travel, units);
        json.WriteEndObject();
    }

    private static ProfileGap? ReadGap(Fields fields)
    {
        var (at, gap) = (fields.RequiredLength("at", LengthBound.Any), fields.RequiredLength("gap", LengthBound.Any));
        fields.RefuseOthers();
        return at is { } a && gap is { } g ? new ProfileGap(a, g) : null;
    }
}
