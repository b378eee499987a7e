using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car;

/// <summary>An indirect drop in a car file.</summary>
internal static class IndirectJson
{
    internal static readonly WordList<EdgeSide> Edges = new(
        ("front", EdgeSide.Front),
        ("left", EdgeSide.Left),
        ("rear", EdgeSide.Rear),
        ("right", EdgeSide.Right)
    );

    public static Reading? Read(Fields fields, string id)
    {
        var point = fields.RequiredText("point");
        var wayPart = fields.Required("way");
        var from = fields.RequiredText("from");
        IndirectWay? way = wayPart?.Text switch
        {
            "midpoint" => Both(fields, from, (a, b) => new IndirectWay.Midpoint(a, b)),
            "offset" => Offset(fields, from),
            "edge" => Edge(fields, from),
            "bar" => Bar(fields, from),
            _ => Refuse(fields, wayPart),
        };
        return point is null || way is null ? null : new Reading.Indirect(id, point, way);
    }

    /// <summary>The way's name in the file.</summary>
    public static string WordFor(IndirectWay way) =>
        way switch
        {
            IndirectWay.Midpoint => "midpoint",
            IndirectWay.Offset => "offset",
            IndirectWay.HoleEdge => "edge",
            _ => "bar",
        };

    public static void Write(Utf8JsonWriter json, Reading.Indirect reading, LengthUnit units)
    {
        json.WriteString("kind", "indirect");
        json.WriteString("point", reading.Point);
        switch (reading.Way)
        {
            case IndirectWay.Midpoint w:
                WriteMarks(json, "midpoint", w.From, w.To);
                break;
            case IndirectWay.Offset w:
                WriteMarks(json, "offset", w.Mark, null);
                json.WriteOptional("dx", w.Dx, units);
                json.WriteOptional("dy", w.Dy, units);
                break;
            case IndirectWay.HoleEdge w:
                WriteMarks(json, "edge", w.Mark, null);
                json.WriteOptional("value", w.Diameter, units);
                json.WriteString("edge", Edges.WordFor(w.Edge));
                break;
            case IndirectWay.Bar w:
                WriteMarks(json, "bar", w.NearEnd, w.FarEnd);
                json.WriteOptional("value", w.StandOff, units);
                break;
        }
    }

    private static void WriteMarks(Utf8JsonWriter json, string way, string from, string? to)
    {
        json.WriteString("way", way);
        json.WriteString("from", from);
        json.WriteOptional("to", to);
    }

    // Every field is asked for before any is judged: a fault in one must not hide another's.
    private static IndirectWay? Offset(Fields fields, string? mark)
    {
        var dx = fields.RequiredLength("dx", LengthBound.Any);
        var dy = fields.RequiredLength("dy", LengthBound.Any);
        return mark is null || dx is null || dy is null ? null : new IndirectWay.Offset(mark, dx.Value, dy.Value);
    }

    private static IndirectWay? Edge(Fields fields, string? mark)
    {
        var diameter = fields.RequiredLength("value", LengthBound.Positive);
        var edge = fields.RequiredWord("edge", Edges);
        return mark is null || diameter is null || edge is null ? null : new IndirectWay.HoleEdge(mark, diameter.Value, edge.Value);
    }

    private static IndirectWay? Bar(Fields fields, string? nearEnd)
    {
        var standOff = fields.RequiredLength("value");
        var ends = Both(fields, nearEnd, (a, b) => new IndirectWay.Midpoint(a, b)) as IndirectWay.Midpoint;
        return standOff is null || ends is null ? null : new IndirectWay.Bar(ends.From, ends.To, standOff.Value);
    }

    private static IndirectWay? Both(Fields fields, string? from, Func<string, string, IndirectWay> make)
    {
        var to = fields.RequiredText("to");
        if (from is not null && from == to)
        {
            fields.Faults.Add(fields.Part, Texts.Say("car.indirect-json.both-marks-are-two-different", from));
            return null;
        }

        return from is null || to is null ? null : make(from, to);
    }

    private static IndirectWay? Refuse(Fields fields, JsonPart? way)
    {
        if (way is not null)
        {
            fields.Faults.Add(way, Texts.Say("car.indirect-json.found-one-of-midpoint-offset", way.Describe()));
        }

        return null;
    }
}
