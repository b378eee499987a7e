using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>The road section of a car file.</summary>
internal static class RoadJson
{
    /// <summary>The section; pairs that pick-ups name must be among the points.</summary>
    public static RoadSection Read(Fields fields, IEnumerable<FramePoint> points)
    {
        var ids = points.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        var section = Read(fields);
        CheckPairs(fields, "front", ["upperFront", "upperRear", "lowerFront", "lowerRear", "trackRodInner"], ids);
        CheckPairs(fields, "rear", ["eye", "inner", "outer"], ids);
        return section;
    }

    /// <summary>The section by itself, as an act of the journal keeps it.</summary>
    public static RoadSection Read(Fields fields)
    {
        var front = fields.Group("front") is { } f ? FrontJson.Read(f) : null;
        var rear = fields.Group("rear") is { } r ? RearJson.Read(r) : null;
        var section = new RoadSection(
            front,
            rear,
            Each(fields, "book", AskedFigureJson.Read, b => b.Kind.ToString(), "figure"),
            Each(fields, "parts", PartDeviationJson.Read, p => p.Id, "id"),
            Each(fields, "adjusters", AdjusterJson.Read, a => a.Id, "id"),
            Each(fields, "wheels", WheelReadingJson.Read, w => w.Id, "id")
        );
        var unmeasured = fields.Group("unmeasured") is { } u ? ReadUnmeasured(u) : null;
        fields.RefuseOthers();
        return section with { Unmeasured = unmeasured };
    }

    public static void Write(Utf8JsonWriter json, RoadSection section, LengthUnit units)
    {
        json.WriteStartObject();
        if (section.Front is { } front)
        {
            json.WritePropertyName("front");
            FrontJson.Write(json, front, units);
        }

        if (section.Rear is { } rear)
        {
            json.WritePropertyName("rear");
            RearJson.Write(json, rear, units);
        }

        json.WriteList("book", section.Book, b => AskedFigureJson.Write(json, b, units));
        json.WriteList("parts", section.Parts, p => PartDeviationJson.Write(json, p, units));
        json.WriteList("adjusters", section.Adjusters, a => AdjusterJson.Write(json, a, units));
        json.WriteList("wheels", section.Wheels, w => WheelReadingJson.Write(json, w, units));
        if (section.Unmeasured is { } unmeasured)
        {
            json.WriteStartObject("unmeasured");
            json.WriteOptional("place", unmeasured.Place, units);
            json.WriteOptional("part", unmeasured.Part, units);
            json.WriteOptional("angle", unmeasured.Angle);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static UnmeasuredAllowance ReadUnmeasured(Fields fields)
    {
        var allowance = new UnmeasuredAllowance(
            fields.OptionalLength("place", LengthBound.Positive),
            fields.OptionalLength("part", LengthBound.Positive),
            fields.OptionalAngle("angle", mayBeNegative: false)
        );
        fields.RefuseOthers();
        return allowance;
    }

    private static void CheckPairs(Fields fields, string group, string[] names, HashSet<string> ids)
    {
        foreach (var name in names)
        {
            var part = fields.Group(group)?.Optional(name);
            if (part is not { Kind: JsonValueKind.String })
            {
                continue;
            }

            var pair = new PickUp.AtPair(part.Text);
            foreach (var missing in new[] { pair.PointOn(Side.Left), pair.PointOn(Side.Right) }.Where(p => !ids.Contains(p)))
            {
                fields.Faults.Add(part, Texts.Say("road.json.the-pair-needs-the-points", part.Text, missing));
            }
        }
    }

    private static List<T> Each<T>(Fields fields, string name, Func<Fields, T?> read, Func<T, string> idOf, string idName)
        where T : class
    {
        var items = new List<T>();
        var firstUse = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var part in fields.Items(name))
        {
            if (read(fields.Item(part)) is not { } value)
            {
                continue;
            }

            items.Add(value);
            if (!firstUse.TryAdd(idOf(value), part.Line))
            {
                fields.Faults.Add(part, Texts.Say("road.json.the-of-this-item-is", idName, firstUse[idOf(value)]));
            }
        }

        return items;
    }
}
