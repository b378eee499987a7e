using System.Buffers;
using System.Text.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road.Json;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// The answer as <c>plumbmark road --json</c> prints it: angles in degrees, lengths in millimetres, every u a standard uncertainty. Names are a contract: more may be added, none is renamed or
/// removed.
/// </summary>
public static class RoadAnswerJson
{
    private const double Degrees = 180 / Math.PI;
    private const double Millimetres = 1000;

    /// <summary>The answer as one JSON document, UTF-8, with a line end.</summary>
    public static byte[] Bytes(RoadAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, JsonWriting.Readable))
        {
            Write(json, answer);
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    private static void Write(Utf8JsonWriter json, RoadAnswer answer)
    {
        json.WriteStartObject();
        json.WriteStartObject("overall");
        json.WriteString("verdict", VerdictWord.For(answer.Verdict));
        json.WriteString("headline", answer.Headline);
        json.WriteString("why", string.Join(" ", answer.Why));
        json.WriteEndObject();
        List(json, "figures", answer.Figures, WriteFigure);
        List(json, "settings", answer.Settings, WriteSettings);
        List(json, "ground", answer.Ground, WriteGround);
        WriteCurves(json, answer);
        List(json, "turns", answer.Turns, WriteTurn);
        List(json, "wheels", answer.Wheels, WriteWheel);
        Texts(json, "wheelRemarks", answer.WheelRemarks);
        List(json, "trials", answer.Trials, WriteTrial);
        List(json, "unmeasured", answer.Unmeasured, WriteUnmeasured);
        Texts(json, "missing", answer.Missing);
        Texts(json, "assumed", answer.Assumed);
        Texts(json, "cautions", answer.Cautions);
        json.WriteEndObject();
    }

    private static void WriteFigure(Utf8JsonWriter json, RoadFigure figure)
    {
        var scale = ScaleOf(figure.Kind);
        json.WriteStartObject();
        WriteKind(json, figure.Kind, figure.Side);
        json.WriteNumber("drawn", figure.Drawn * scale);
        json.WriteNumber("value", figure.Value * scale);
        json.WriteNumber("u", figure.U * scale);
        json.WriteNumber("uUnmeasured", figure.UUnmeasured * scale);
        json.WriteNumber("bow", figure.Bow * scale);
        WriteVerdict(json, figure.Book, figure.ProbabilityWithin, figure.Verdict, scale);
        List(
            json,
            "contributions",
            figure.Contributions,
            (j, c) =>
            {
                j.WriteStartObject();
                j.WriteString("what", RoadNames.Of(c.What, c.Side));
                j.WriteString("side", RoadWords.Sides.WordFor(c.Side));
                j.WriteNumber("amount", c.Amount * scale);
                j.WriteNumber("u", c.U * scale);
                j.WriteEndObject();
            }
        );
        json.WriteEndObject();
    }

    private static void WriteSettings(Utf8JsonWriter json, SideSettings settings)
    {
        json.WriteStartObject();
        json.WriteString("side", RoadWords.Sides.WordFor(settings.Side));
        if (settings.IsRestored is { } restored)
        {
            json.WriteBoolean("restored", restored);
        }

        json.WriteBoolean("faultAbsorbed", settings.IsFaultAbsorbed);
        List(
            json,
            "adjusters",
            settings.Settings,
            (j, s) =>
            {
                j.WriteStartObject();
                j.WriteString("id", s.Adjuster.Id);
                j.WriteNumber("from", s.FromMetres * Millimetres);
                j.WriteNumber("to", s.ToMetres * Millimetres);
                j.WriteBoolean("atItsEnd", s.IsAtItsEnd);
                j.WriteBoolean("unusual", s.IsUnusual);
                j.WriteEndObject();
            }
        );
        List(
            json,
            "angles",
            settings.Angles,
            (j, a) =>
            {
                j.WriteStartObject();
                j.WriteString("figure", RoadWords.Figures.WordFor(a.Kind));
                j.WriteNumber("aim", a.Aim * Degrees);
                j.WriteNumber("before", a.Before * Degrees);
                j.WriteNumber("after", a.After * Degrees);
                j.WriteNumber("u", a.U * Degrees);
                j.WriteNumber("leftOver", a.LeftOver * Degrees);
                j.WriteEndObject();
            }
        );
        Texts(json, "sentences", settings.Sentences);
        json.WriteEndObject();
    }

    private static void WriteGround(Utf8JsonWriter json, GroundAnswer ground)
    {
        json.WriteStartObject();
        json.WriteString("side", RoadWords.Sides.WordFor(ground.Side));
        json.WriteNumber("scrubRadiusDrawn", ground.ScrubRadiusDrawn * Millimetres);
        json.WriteNumber("scrubRadius", ground.ScrubRadius * Millimetres);
        json.WriteNumber("trailDrawn", ground.TrailDrawn * Millimetres);
        json.WriteNumber("trail", ground.Trail * Millimetres);
        json.WriteNumber("rollCentreDrawn", ground.RollCentreDrawn * Millimetres);
        json.WriteNumber("rollCentre", ground.RollCentre * Millimetres);
        json.WriteEndObject();
    }

    private static void WriteCurves(Utf8JsonWriter json, RoadAnswer answer)
    {
        json.WriteStartArray("curves");
        foreach (var (curves, isDrawn) in new[] { (answer.DrawnCurves, true), (answer.FoundCurves, false) })
        {
            foreach (var (side, points) in curves.Where(c => c.Value.Count > 0))
            {
                json.WriteStartObject();
                json.WriteString("side", RoadWords.Sides.WordFor(side));
                json.WriteString("of", isDrawn ? "drawn" : "found");
                List(json, "points", points, WriteCurvePoint);
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }

    private static void WriteCurvePoint(Utf8JsonWriter json, CurvePoint point)
    {
        json.WriteStartObject();
        json.WriteNumber("travel", point.TravelMetres * Millimetres);
        json.WriteNumber("camber", point.Camber * Degrees);
        json.WriteNumber("toeIn", point.ToeIn * Degrees);
        json.WriteNumber("castor", point.Castor * Degrees);
        json.WriteNumber("outboard", point.OutboardMetres * Millimetres);
        json.WriteNumber("forward", point.ForwardMetres * Millimetres);
        json.WriteNumber("kingPin", point.KingPin * Degrees);
        Known(json, "rollCentre", point.RollCentreMetres * Millimetres);
        Known(json, "scrubRadius", point.ScrubRadiusMetres * Millimetres);
        Known(json, "trail", point.TrailMetres * Millimetres);
        json.WriteEndObject();
    }

    private static void WriteTurn(Utf8JsonWriter json, TurnPoint turn)
    {
        json.WriteStartObject();
        json.WriteNumber("inner", turn.Inner * Degrees);
        foreach (var (name, wheels) in new[] { ("Drawn", turn.Drawn), ("TurningLeft", turn.ToTheLeft), ("TurningRight", turn.ToTheRight) })
        {
            Known(json, $"outer{name}", wheels?.OuterTurn * Degrees);
            Known(json, $"innerCamber{name}", wheels?.InnerCamber * Degrees);
            Known(json, $"outerCamber{name}", wheels?.OuterCamber * Degrees);
        }

        json.WriteEndObject();
    }

    private static void WriteWheel(Utf8JsonWriter json, WheelResult result)
    {
        var scale = ScaleOf(result.Kind);
        json.WriteStartObject();
        WriteKind(json, result.Kind, result.Side);
        json.WriteOptional("wheel", result.Wheel is { } wheel ? RoadWords.Wheels.WordFor(wheel) : null);
        json.WriteOptional("axle", result.Axle is { } axle ? RoadWords.Axles.WordFor(axle) : null);
        json.WriteNumber("value", result.Value * scale);
        json.WriteNumber("u", result.U * scale);
        WriteVerdict(json, result.Book, result.ProbabilityWithin, result.Verdict, scale);
        Texts(json, "readings", result.Readings);
        Texts(json, "remarks", result.Remarks);
        json.WriteEndObject();
    }

    private static void WriteTrial(Utf8JsonWriter json, TrialCheck trial)
    {
        var scale = ScaleOf(trial.Kind);
        json.WriteStartObject();
        WriteKind(json, trial.Kind, trial.Side);
        json.WriteNumber("linearLow", trial.LinearLow * scale);
        json.WriteNumber("linearHigh", trial.LinearHigh * scale);
        Known(json, "triedLow", trial.TriedLow * scale);
        Known(json, "triedHigh", trial.TriedHigh * scale);
        json.WriteNumber("tolerance", trial.Tolerance * scale);
        json.WriteBoolean("agrees", trial.Agrees);
        json.WriteNumber("doNotGoTogether", trial.DoNotGoTogether);
        json.WriteEndObject();
    }

    private static void WriteUnmeasured(Utf8JsonWriter json, UnmeasuredShare share)
    {
        json.WriteStartObject();
        json.WriteString("what", RoadNames.Of(share.What, share.Side));
        json.WriteString("figure", RoadWords.Figures.WordFor(share.Figure));
        json.WriteNumber("u", share.U * ScaleOf(share.Figure));
        json.WriteEndObject();
    }

    private static void WriteKind(Utf8JsonWriter json, FigureKind kind, Side? side)
    {
        json.WriteString("figure", RoadWords.Figures.WordFor(kind));
        json.WriteOptional("side", side is { } s ? RoadWords.Sides.WordFor(s) : null);
        json.WriteString("unit", RoadFigures.UnitOf(kind) == FigureUnit.Angle ? "degree" : "mm");
    }

    private static void WriteVerdict(Utf8JsonWriter json, AskedFigure? book, double? within, Verdict? verdict, double scale)
    {
        Known(json, "least", book?.LeastSi * scale);
        Known(json, "most", book?.MostSi * scale);
        json.WriteOptional("source", book is null ? null : LimitsJson.Sources.WordFor(book.Source));
        Known(json, "probabilityWithin", within);
        json.WriteOptional("verdict", verdict is { } v ? VerdictWord.For(v) : null);
    }

    private static double ScaleOf(FigureKind kind) => RoadFigures.UnitOf(kind) == FigureUnit.Angle ? Degrees : Millimetres;

    private static void Known(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, number);
        }
    }

    private static void Texts(Utf8JsonWriter json, string name, IReadOnlyList<string> texts) =>
        List(json, name, texts, (j, t) => j.WriteStringValue(t));

    private static void List<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(json, item);
        }

        json.WriteEndArray();
    }
}
