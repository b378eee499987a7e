using System.Buffers;
using System.Text.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Floor;

/// <summary>
/// The answer as <c>plumbmark check --json</c> prints it: lengths in millimetres, every u a standard uncertainty. Names are a contract:
/// more may be added, none is renamed or removed.
/// </summary>
public static class FloorAnswerJson
{
    /// <summary>The answer as one JSON document, UTF-8, with a line end.</summary>
    public static byte[] Bytes(FloorAnswer answer)
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
    public static void Write(Utf8JsonWriter json, FloorAnswer answer)
    {
        json.WriteStartObject();
        WriteOverall(json, answer.Overall);
        List(json, "points", answer.Points, WritePoint);
        json.WriteStartObject("adjustment");
        json.WriteNumber("redundancy", answer.Adjustment.Redundancy);
        Number(json, "varianceFactor", answer.Adjustment.VarianceFactor);
        Number(json, "chiSquareP", answer.Adjustment.ChiSquareP);
        json.WriteEndObject();
        List(json, "readings", answer.Readings, WriteReading);
        List(json, "suspects", answer.Suspects, WriteSuspect);
        List(json, "pairs", answer.Pairs, WritePair);
        List(json, "comparisons", answer.Comparisons, WriteComparison);
        List(json, "damage", answer.Damage, WriteDamage);
        List(json, "checks", answer.Checks, WriteCheck);
        List(json, "blindSpots", answer.BlindSpots, WriteBlindSpot);
        List(json, "sight", answer.Sight, WriteBlindSpot);
        List(json, "lookAlikes", answer.LookAlikes, WriteLookAlike);
        List(json, "leftOut", answer.LeftOut, (j, id) => j.WriteStringValue(id));
        List(json, "next", answer.Next, WriteNext);
        json.WriteEndObject();
    }

    private static void WriteOverall(Utf8JsonWriter json, OverallAnswer overall)
    {
        json.WriteStartObject("overall");
        json.WriteString("verdict", VerdictWord.For(overall.Verdict));
        json.WriteString("headline", overall.Headline);
        json.WriteString("why", string.Join(" ", overall.Why));
        List(json, "reasons", overall.Why, (j, sentence) => j.WriteStringValue(sentence));
        List(
            json,
            "floating",
            overall.Floating,
            (j, group) =>
            {
                j.WriteStartObject();
                List(j, "points", group.Points, (k, id) => k.WriteStringValue(id));
                j.WriteString("sentence", group.Sentence);
                j.WriteEndObject();
            }
        );
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, PointEstimate point)
    {
        json.WriteStartObject();
        json.WriteString("id", point.Id);
        MillimetresIfKnown(json, "x", point.XMetres);
        MillimetresIfKnown(json, "y", point.YMetres);
        MillimetresIfKnown(json, "z", point.ZMetres);
        MillimetresIfKnown(json, "ux", point.UxMetres);
        MillimetresIfKnown(json, "uy", point.UyMetres);
        MillimetresIfKnown(json, "uz", point.UzMetres);
        if (point.Deviation is { } deviation)
        {
            json.WriteStartObject("deviation");
            json.WriteString("against", deviation.Against == DeviationFrom.Nominal ? "nominal" : "symmetry");
            MillimetresIfKnown(json, "dx", deviation.DxMetres);
            MillimetresIfKnown(json, "dy", deviation.DyMetres);
            MillimetresIfKnown(json, "dz", deviation.DzMetres);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteReading(Utf8JsonWriter json, ReadingFit reading)
    {
        json.WriteStartObject();
        json.WriteString("id", reading.Id);
        Millimetres(json, "residual", reading.ResidualMetres);
        Number(json, "standardised", reading.Standardised);
        json.WriteNumber("redundancyNumber", reading.RedundancyNumber);
        Millimetres(json, "minimalDetectable", reading.MinimalDetectableMetres);
        Millimetres(json, "sigma", reading.SigmaMetres);
        json.WriteEndObject();
    }

    internal static void WriteSuspect(Utf8JsonWriter json, Suspect suspect)
    {
        json.WriteStartObject();
        json.WriteOptional("reading", suspect.Reading);
        json.WriteOptional("point", suspect.Point);
        json.WriteString("kind", suspect.Kind);
        Millimetres(json, "size", suspect.SizeMetres);
        Number(json, "odds", suspect.Odds);
        json.WriteString("sentence", suspect.Sentence);
        json.WriteEndObject();
    }

    private static void WritePair(Utf8JsonWriter json, PairEstimate pair)
    {
        json.WriteStartObject();
        json.WriteString("left", pair.Left);
        json.WriteString("right", pair.Right);
        Millimetres(json, "sideShift", pair.SideShiftMetres);
        Millimetres(json, "stagger", pair.StaggerMetres);
        Millimetres(json, "width", pair.WidthMetres);
        Millimetres(json, "heightDifference", pair.HeightDifferenceMetres);
        Millimetres(json, "uSideShift", pair.USideShiftMetres);
        Millimetres(json, "uStagger", pair.UStaggerMetres);
        Millimetres(json, "uWidth", pair.UWidthMetres);
        Millimetres(json, "uHeightDifference", pair.UHeightDifferenceMetres);
        Millimetres(json, "levelledHeightDifference", pair.LevelledHeightDifferenceMetres);
        Millimetres(json, "uLevelledHeightDifference", pair.ULevelledHeightDifferenceMetres);
        json.WriteEndObject();
    }

    private static void WriteComparison(Utf8JsonWriter json, SideComparison comparison)
    {
        json.WriteStartObject();
        List(json, "left", [comparison.LeftFrom, comparison.LeftTo], (j, id) => j.WriteStringValue(id));
        List(json, "right", [comparison.RightFrom, comparison.RightTo], (j, id) => j.WriteStringValue(id));
        Millimetres(json, "difference", comparison.DifferenceMetres);
        Millimetres(json, "u", comparison.UMetres);
        json.WriteString("sentence", comparison.Sentence);
        json.WriteEndObject();
    }

    private static void WriteDamage(Utf8JsonWriter json, DamageEstimate damage)
    {
        json.WriteStartObject();
        json.WriteString("form", damage.Form);
        Millimetres(json, "amount", damage.AmountMetres);
        Millimetres(json, "u", damage.UMetres);
        json.WriteString("from", damage.From);
        Number(json, "odds", damage.Odds);
        json.WriteString("sentence", damage.Sentence);
        json.WriteEndObject();
    }

    private static void WriteCheck(Utf8JsonWriter json, Check check)
    {
        json.WriteStartObject();
        json.WriteString("id", check.Id);
        json.WriteString("kind", check.Kind);
        Millimetres(json, "value", check.ValueMetres);
        Millimetres(json, "u", check.UMetres);
        Millimetres(json, "limit", check.LimitMetres);
        json.WriteString("limitSource", check.LimitSource is { } source ? LimitsJson.Sources.WordFor(source) : null);
        Number(json, "probabilityWithin", check.ProbabilityWithin);
        if (double.IsFinite(check.DegreesOfFreedom))
        {
            Number(json, "degreesOfFreedom", check.DegreesOfFreedom);
        }

        json.WriteString("verdict", check.Verdict is { } verdict ? VerdictWord.For(verdict) : null);
        List(json, "points", check.Points, (j, id) => j.WriteStringValue(id));
        json.WriteBoolean("mustBeTrue", check.MustBeTrue);
        if (check.Hidden is { } hidden)
        {
            json.WriteStartObject("hiddenError");
            json.WriteString("reading", hidden.Reading);
            Millimetres(json, "change", hidden.ChangeMetres);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteBlindSpot(Utf8JsonWriter json, BlindSpot spot)
    {
        json.WriteStartObject();
        json.WriteString("form", spot.Form);
        json.WriteOptional("point", spot.Point);
        json.WriteOptional("direction", spot.Direction);
        Millimetres(json, "smallestSeen", spot.SmallestSeenMetres);
        Millimetres(json, "limit", spot.LimitMetres);
        json.WriteString("sentence", spot.Sentence);
        json.WriteEndObject();
    }

    private static void WriteLookAlike(Utf8JsonWriter json, LookAlike alike)
    {
        json.WriteStartObject();
        json.WriteString("kind", alike.Kind);
        Millimetres(json, "size", alike.SizeMetres);
        Millimetres(json, "u", alike.UMetres);
        json.WriteString("sentence", alike.Sentence);
        json.WriteEndObject();
    }

    internal static void WriteNext(Utf8JsonWriter json, NextReading next)
    {
        json.WriteStartObject();
        json.WriteString("kind", next.Kind);
        json.WriteOptional("from", next.From);
        json.WriteOptional("to", next.To);
        json.WriteOptional("point", next.Point);
        List(json, "settles", next.Settles, (j, id) => j.WriteStringValue(id));
        json.WriteNumber("times", next.Times);
        json.WriteNumber("minutes", next.Minutes);
        json.WriteString("sentence", next.Sentence);
        json.WriteEndObject();
    }

    /// <summary>A list under a name, written even when empty: a reader may count on every list being there.</summary>
    private static void List<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(json, item);
        }

        json.WriteEndArray();
    }

    private static void Millimetres(Utf8JsonWriter json, string name, double? metres) => Number(json, name, InMillimetres(metres));

    /// <summary>A coordinate that no reading touches is absent, not null and not zero.</summary>
    private static void MillimetresIfKnown(Utf8JsonWriter json, string name, double? metres)
    {
        if (metres is not null)
        {
            Millimetres(json, name, metres);
        }
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        // JSON has no infinity: what is beyond every number is written as none.
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>To the nanometre: beyond every tape and level, and free of the last binary digit's noise.</summary>
    private static double? InMillimetres(double? metres) => metres is { } m && double.IsFinite(m) ? Math.Round(m * 1000, 6) + 0.0 : null;
}
