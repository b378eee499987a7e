using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Bench.Json;

internal static partial class MeasureJson
{
    public static void Write(Utf8JsonWriter json, Measure measure, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", measure.Id);
        WriteBody(json, measure, units);
        json.WriteOptional("tool", measure.Tool);
        json.WriteOptional("sigma", measure.Sigma, units);
        json.WriteOptional("note", measure.Note);
        json.WriteOptional("withdrawn", measure.Withdrawn);
        json.WriteEndObject();
    }

    private static void WriteBody(Utf8JsonWriter json, Measure measure, LengthUnit units)
    {
        switch (measure)
        {
            case Measure.Plain m:
                Head(json, "length", m.Dimension);
                WriteLengths(json, "values", m.Values, units);
                break;
            case Measure.Angle m:
                Head(json, "angle", m.Dimension);
                json.WriteList("values", m.Degrees, a => json.WriteNumberValue(a.Degrees));
                break;
            case Measure.Bore m:
                json.WriteString("kind", "bore");
                json.WriteString("bore", m.Name);
                WriteLengths(json, "mouth", m.Mouth, units);
                WriteLengths(json, "deep", m.Deep, units);
                json.WriteOptional(m.MateIs == BoreMate.Pin ? "pin" : "bush", m.Mate, units);
                break;
            case Measure.Centres m:
                Between(json, "centres", m.From, m.To);
                WriteLengths(json, "values", m.Values, units);
                json.WriteString("over", PartWordLists.Over.WordFor(m.Over));
                break;
            case Measure.Heights m:
                json.WriteString("kind", "heights");
                json.WriteList("face", m.Face, h => WriteHeight(json, null, h.X, h.Y, h.Height, units));
                json.WriteList("places", m.Places, h => WriteHeight(json, h.Dimension, h.X, h.Y, h.Height, units));
                break;
            case Measure.Straightedge m:
                Head(json, "straightedge", m.Dimension);
                json.WriteList("gaps", m.Gaps, g => WriteGap(json, g, units));
                break;
            case Measure.Rods m:
                Between(json, "rods", m.From, m.To);
                json.WriteOptional("span", (Length?)m.Span, units);
                json.WriteOptional("near", m.Near, units);
                json.WriteOptional("far", m.Far, units);
                WritePair(json, "fromHeights", m.FromHeights, units);
                WritePair(json, "toHeights", m.ToHeights, units);
                break;
            case Measure.BackToBack m:
                json.WriteString("kind", "back-to-back");
                json.WriteList("differences", m.Differences, d => WriteDifference(json, d, units));
                break;
            case Measure.SpringLoads m:
                json.WriteString("kind", "spring");
                json.WriteList("loads", m.Loads, l => WriteLoad(json, l, units));
                break;
            case Measure.RunOut m:
                Head(json, "run-out", m.Dimension);
                WriteLengths(json, "readings", m.Readings, units);
                break;
        }
    }

    private static void Head(Utf8JsonWriter json, string kind, string dimension)
    {
        json.WriteString("kind", kind);
        json.WriteString("dimension", dimension);
    }

    private static void Between(Utf8JsonWriter json, string kind, string from, string to)
    {
        json.WriteString("kind", kind);
        json.WriteString("from", from);
        json.WriteString("to", to);
    }

    private static void WriteLengths(Utf8JsonWriter json, string name, IReadOnlyList<Length> lengths, LengthUnit units) =>
        json.WriteList(name, lengths, l => LengthPart.Write(json, l, units));

    private static void WritePair(Utf8JsonWriter json, string name, (Length First, Length Second)? pair, LengthUnit units)
    {
        if (pair is { } two)
        {
            WriteLengths(json, name, [two.First, two.Second], units);
        }
    }

    private static void WriteHeight(Utf8JsonWriter json, string? dimension, Length x, Length y, Length height, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteOptional("dimension", dimension);
        json.WriteOptional("x", (Length?)x, units);
        json.WriteOptional("y", (Length?)y, units);
        json.WriteOptional("height", (Length?)height, units);
        json.WriteEndObject();
    }

    private static void WriteGap(Utf8JsonWriter json, Gap gap, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteOptional("at", (Length?)gap.At, units);
        if (gap.Sheets is { } sheets)
        {
            json.WriteNumber("sheets", sheets);
        }
        else
        {
            json.WriteOptional(gap.Stops is null ? "gap" : "goes", (Length?)gap.Goes, units);
            json.WriteOptional("stops", gap.Stops, units);
        }

        json.WriteEndObject();
    }

    private static void WriteDifference(Utf8JsonWriter json, SideDifference difference, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("dimension", difference.Dimension);
        json.WriteOptional("value", (Length?)difference.Value, units);
        json.WriteEndObject();
    }

    private static void WriteLoad(Utf8JsonWriter json, LoadedLength load, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("load", AmountText.Write(load.Load));
        json.WriteOptional("length", (Length?)load.Length, units);
        json.WriteEndObject();
    }
}
