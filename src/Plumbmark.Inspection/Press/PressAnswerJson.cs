using System.Buffers;
using System.Text.Json;
using Plumbmark.Engine.Bending;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Press;

/// <summary>
/// The answer as <c>plumbmark press --json</c> prints it: millimetres, newtons, degrees, per cent of strain; every u is a standard uncertainty. More fields
/// may be added, none is renamed or removed.
/// </summary>
public static class PressAnswerJson
{
    private const double Degrees = 180 / Math.PI;

    /// <summary>The reports as one JSON document, UTF-8, with a line end.</summary>
    public static byte[] Bytes(IReadOnlyList<PressReport> reports, PressWords words)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, JsonWriting.Readable))
        {
            json.WriteStartObject();
            json.WriteStartArray("jobs");
            foreach (var report in reports)
            {
                Write(json, report, words);
            }

            json.WriteEndArray();
            Texts(json, "cautions", GateWords.Cautions);
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    private static void Write(Utf8JsonWriter json, PressReport report, PressWords words)
    {
        json.WriteStartObject();
        json.WriteString("id", report.Job.Id);
        json.WriteString("part", report.Job.Part.Name);
        json.WriteStartObject("state");
        json.WriteString("kind", KindOf(report.State));
        json.WriteString("headline", words.Headline(report.State));
        Texts(json, "sentences", words.Sentences(report));
        WriteState(json, report.State);
        json.WriteEndObject();
        WriteFindings(json, report.Findings, words);
        if (report.Plan is { } plan)
        {
            WritePlan(json, plan);
        }

        if (report.Log is { } log)
        {
            WriteLog(json, log);
        }

        json.WriteEndObject();
    }

    /// <summary>The word for a state.</summary>
    public static string KindOf(PressState state) =>
        state.Match(_ => "refused", _ => "asking", _ => "needs-more", _ => "next-bite", _ => "stopped", _ => "over", _ => "straight");

    private static void WriteState(Utf8JsonWriter json, PressState state)
    {
        switch (state)
        {
            case PressState.Refused s:
                Texts(json, "refusals", [.. s.Refusals.Select(r => r.Reason.ToString())]);
                break;
            case PressState.Asking s:
                Texts(json, "questions", [.. s.Questions.Select(q => q.Topic)]);
                break;
            case PressState.NextBite s:
                Number(json, "travel", s.Travel.TravelMetres * 1000);
                WriteInterval(json, "straightAt", s.Travel.StraightMetres);
                WriteInterval(json, "set", s.Travel.SetMetres);
                json.WriteBoolean("mayGiveNothing", s.Travel.MayGiveNothing);
                json.WriteBoolean("measureFirst", s.MeasureFirst);
                break;
            case PressState.Stopped s:
                Texts(json, "reasons", [.. s.Reasons.Select(r => r.ToString())]);
                json.WriteString("afterBite", s.AfterBite);
                break;
            case PressState.Over s:
                Texts(json, "reasons", [.. s.Reasons.Select(r => r.ToString())]);
                break;
            case PressState.Straight s:
                json.WriteOptional("verdict", s.Verdict is { } v ? VerdictWord.For(v) : null);
                json.WriteBoolean("crackTested", s.IsTested);
                break;
        }
    }

    private static void WriteFindings(Utf8JsonWriter json, PressFindings findings, PressWords words)
    {
        json.WriteStartObject("findings");
        Texts(json, "sentences", [.. findings.Lines.Select(words.Line), .. words.More(findings)]);
        WriteBend(json, "bend", findings.Bend, findings.IsSweep ? "sweep" : "kink");
        WriteBend(json, "sideBend", findings.SideBend, null);
        json.WriteBoolean("linesDisagree", findings.LinesDisagree);
        if (findings.Twist is { } twist)
        {
            json.WriteStartObject("twist");
            Number(json, "angle", twist.AngleRadians * Degrees);
            Number(json, "u", twist.UncertaintyRadians * Degrees);
            json.WriteBoolean("seen", twist.IsSeen);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteBend(Utf8JsonWriter json, string name, Bend? bend, string? form)
    {
        if (bend is null)
        {
            return;
        }

        json.WriteStartObject(name);
        json.WriteOptional("form", form);
        Number(json, "at", bend.CentreMetres * 1000);
        Number(json, "uAt", bend.CentreUncertaintyMetres * 1000);
        Number(json, "angle", bend.AngleRadians * Degrees);
        Number(json, "uAngle", bend.AngleUncertaintyRadians * Degrees);
        Number(json, "length", bend.LengthMetres * 1000);
        Number(json, "uLength", bend.LengthUncertaintyMetres * 1000);
        json.WriteEndObject();
    }

    private static void WritePlan(Utf8JsonWriter json, PressPlan plan)
    {
        json.WriteStartObject("plan");
        json.WriteBoolean("proposed", plan.Layout.IsProposed);
        Number(json, "leftArm", plan.Layout.LeftArmMetres * 1000);
        Number(json, "rightArm", plan.Layout.RightArmMetres * 1000);
        Number(json, "span", plan.Layout.SpanMetres * 1000);
        Number(json, "ramAt", plan.Layout.RamMetres * 1000);
        Number(json, "rightBlockHigher", plan.Layout.RightBlockHigherMetres * 1000);
        json.WriteOptional("packer", plan.Layout.Packer);
        Number(json, "outBy", plan.OutByMetres * 1000);
        Number(json, "uOutBy", plan.OutByUncertaintyMetres * 1000);
        json.WriteString("yieldSource", plan.Metal.Source);
        Range(json, "yieldStress", plan.Low.Curve.Steel.YieldStressPascals / 1e6, plan.High.Curve.Steel.YieldStressPascals / 1e6);
        Range(json, "yieldLoad", plan.Low.YieldLoadNewtons, plan.High.YieldLoadNewtons);
        Range(json, "yieldTravel", plan.Low.YieldTravelMetres * 1000, plan.High.YieldTravelMetres * 1000);
        Range(json, "collapseLoad", plan.Low.CollapseLoadNewtons, plan.High.CollapseLoadNewtons);
        Number(json, "hingeSet", plan.HingeSetMetres * 1000);
        Number(json, "largestSetOfOneBite", double.IsFinite(plan.WallSetMetres) ? plan.WallSetMetres * 1000 : null);
        Number(json, "straighteningLoad", plan.Straightening?.LoadNewtons);
        Number(json, "straighteningStrain", plan.Straightening is null ? null : plan.StraighteningStrain * 100);
        json.WriteEndObject();
    }

    private static void WriteLog(Utf8JsonWriter json, PressLog log)
    {
        json.WriteStartArray("bites");
        foreach (var bite in log.Bites)
        {
            json.WriteStartObject();
            json.WriteString("id", bite.Record.Id);
            Number(json, "travel", bite.Record.Travel.Millimetres);
            Number(json, "set", bite.SetMetres * 1000);
            Number(json, "springBack", bite.SpringBackMetres * 1000);
            Number(json, "left", bite.LeftMetres * 1000);
            WriteInterval(json, "expectedSet", bite.Expected);
            json.WriteBoolean("setNothing", bite.SetNothing);
            Number(json, "strainSpent", bite.StrainSpent * 100);
            Texts(json, "stops", [.. bite.Stops.Select(s => s.ToString())]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Number(json, "left", log.LeftMetres * 1000);
        Number(json, "uLeft", log.LeftUncertaintyMetres * 1000);
        json.WriteOptional("straightness", log.Straightness is { } v ? VerdictWord.For(v) : null);
    }

    private static void WriteInterval(Utf8JsonWriter json, string name, Interval interval)
    {
        json.WriteStartObject(name);
        Number(json, "low", interval.Low * 1000);
        Number(json, "middle", interval.Middle * 1000);
        Number(json, "high", interval.High * 1000);
        json.WriteEndObject();
    }

    private static void Range(Utf8JsonWriter json, string name, double low, double high)
    {
        json.WriteStartObject(name);
        Number(json, "low", low);
        Number(json, "high", high);
        json.WriteEndObject();
    }

    // A ten-thousandth is below every reading here and keeps the text short.
    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, Math.Round(number, 4));
        }
    }

    private static void Texts(Utf8JsonWriter json, string name, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
