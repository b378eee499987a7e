using System.Buffers;
using System.Text.Json;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Bench;

/// <summary>
/// The answer as <c>plumbmark bench --json</c> prints it: lengths in millimetres, angles in degrees, rates in newtons per millimetre, every u a standard
/// uncertainty. More fields may be added, none is renamed or removed.
/// </summary>
public static class BenchAnswerJson
{
    /// <summary>The answer as one JSON document, UTF-8, with a line end.</summary>
    public static byte[] Bytes(BenchAnswer answer)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, JsonWriting.Readable))
        {
            Write(json, answer);
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>The answer as one JSON object.</summary>
    public static void Write(Utf8JsonWriter json, BenchAnswer answer)
    {
        json.WriteStartObject();
        json.WriteStartObject("overall");
        json.WriteString("verdict", VerdictWord.For(answer.Verdict));
        json.WriteString("why", answer.Headline);
        json.WriteEndObject();
        List(json, "parts", answer.Parts, WritePart);
        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, PartAnswer part)
    {
        json.WriteStartObject();
        json.WriteString("id", part.Part.Id);
        json.WriteString("kind", PartWordLists.Kinds.WordFor(part.Part.Kind));
        json.WriteString("verdict", VerdictWord.For(part.Verdict));
        json.WriteString("disposition", DispositionWord.For(part.Disposition));
        Texts(json, "reasons", part.Reasons);
        List(json, "dimensions", part.Dimensions, WriteDimension);
        if (part.Variant is { } variant)
        {
            WriteVariant(json, variant, part.IsRightForThisCar);
        }

        Texts(json, "measureNext", part.MeasureNext);
        Texts(json, "wanting", part.Wanting);
        Texts(json, "reminders", part.Reminders);
        json.WriteEndObject();
    }

    private static void WriteDimension(Utf8JsonWriter json, DimensionAnswer dimension)
    {
        var (value, quantity) = (dimension.Value, dimension.Value.Quantity);
        json.WriteStartObject();
        json.WriteString("id", value.Dimension);
        json.WriteString(
            "unit",
            quantity switch
            {
                Quantity.Length => "mm",
                Quantity.Angle => "deg",
                _ => "N/mm",
            }
        );
        Number(json, "value", Shown(quantity, value.Si));
        Number(json, "u", Shown(quantity, value.U));
        json.WriteString("tells", value.Nature.ToString().ToLowerInvariant());
        List(
            json,
            "comparisons",
            dimension.Comparisons,
            (j, c) =>
            {
                j.WriteStartObject();
                j.WriteString("against", c.Against.ToString().ToLowerInvariant());
                j.WriteString("reference", c.Reference);
                Number(j, "nominal", Shown(quantity, c.Nominal));
                Number(j, "deviation", Shown(quantity, c.Deviation));
                Number(j, "u", Shown(quantity, c.U));
                Number(j, "limit", Shown(quantity, c.Limit?.Si));
                j.WriteString("limitSource", c.Limit is { } limit ? LimitsJson.Sources.WordFor(limit.Source) : null);
                j.WriteString("limitNote", c.Limit?.Note);
                Number(j, "probabilityWithin", c.ProbabilityWithin);
                j.WriteString("verdict", c.Verdict is { } verdict ? VerdictWord.For(verdict) : null);
                j.WriteOptional("putDownTo", c.PutDownTo);
                j.WriteEndObject();
            }
        );
        json.WriteOptional("remark", value.Remark);
        json.WriteEndObject();
    }

    private static void WriteVariant(Utf8JsonWriter json, VariantAnswer variant, bool? isRight)
    {
        json.WriteStartObject("variant");
        List(
            json,
            "probabilities",
            variant.Odds,
            (j, o) =>
            {
                j.WriteStartObject();
                j.WriteString("variant", o.Variant.Id);
                j.WriteString("name", o.Variant.Name);
                Number(j, "probability", o.Straight);
                Number(j, "bent", o.Bent);
                Truth(j, "fittedToThisCar", o.IsFittedToThisCar);
                j.WriteEndObject();
            }
        );
        Number(json, "noneOrBent", variant.NoneOrBent);
        json.WriteString("recognised", variant.Type?.Variant.Id);
        Truth(json, "rightForThisCar", isRight);
        json.WriteString("decidedBy", variant.DecidedBy);
        List(
            json,
            "inseparable",
            variant.LookAlikes,
            (j, l) =>
            {
                j.WriteStartObject();
                j.WriteString("first", l.First.Id);
                j.WriteString("second", l.Second.Id);
                Number(j, "separation", l.Separation);
                j.WriteString("measure", l.MeasureNext);
                j.WriteString("sentence", l.Sentence);
                j.WriteEndObject();
            }
        );
        json.WriteEndObject();
    }

    private static void List<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(json, item);
        }

        json.WriteEndArray();
    }

    private static void Texts(Utf8JsonWriter json, string name, IReadOnlyList<string> texts) =>
        List(json, name, texts, (j, t) => j.WriteStringValue(t));

    private static void Truth(Utf8JsonWriter json, string name, bool? truth)
    {
        if (truth is { } known)
        {
            json.WriteBoolean(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            // Beyond any gauge, and free of the last binary digit's noise.
            json.WriteNumber(name, Math.Round(number, 9) + 0.0);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static double? Shown(Quantity quantity, double? si) =>
        quantity switch
        {
            Quantity.Length => si * 1000,
            Quantity.Angle => si * 180 / Math.PI,
            _ => si / 1000,
        };
}
