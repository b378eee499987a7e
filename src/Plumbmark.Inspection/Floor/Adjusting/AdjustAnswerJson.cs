using System.Buffers;
using System.Text.Json;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>
/// The answer as <c>plumbmark adjust --json</c> prints it: lengths in millimetres, residual = adjusted − observed, every u a standard uncertainty from the
/// stated sigmas (times <c>sigma0</c>: a-posteriori). Names are a contract: more may be added, none is renamed or removed.
/// </summary>
public static class AdjustAnswerJson
{
    // Readings as their uncertainties say disagree this much once in a thousand networks.
    private const double UnexplainedBelow = 1e-3;

    // A share of control that is only rounding.
    private const double Uncontrolled = 1e-6;

    /// <summary>The answer as one JSON document, UTF-8, with a line end.</summary>
    public static byte[] Bytes(AdjustAnswer answer)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, JsonWriting.Readable))
        {
            json.WriteStartObject();
            json.WriteString("outcome", answer.Outcome.Match(_ => "adjusted", _ => "loose", _ => "not converged", _ => "refused"));
            List(json, "remarks", Remarks(answer), (j, sentence) => j.WriteStringValue(sentence));
            WriteFit(json, answer);
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>What a person should know about the outcome, each in one sentence.</summary>
    public static IReadOnlyList<string> Remarks(AdjustAnswer answer)
    {
        var remarks = answer.Outcome.Match<IReadOnlyList<string>>(
            _ => [],
            o => [.. NetworkWords.Floating(o.Defect).Select(g => g.Sentence)],
            o => [NetworkWords.NotConverged(o.Summary.Iterations.Count)],
            o => [.. o.Faults.Select(NetworkWords.Of)]
        );
        if (answer.Outcome.FitOrNull is not { } fit)
        {
            return remarks;
        }

        var hasLengthsOnTheFloor = answer.Network.Network.Observations.Any(o => o is Observation.PlanDistance or Observation.Offset);
        return
        [
            .. remarks,
            .. answer.MarksArePoints && hasLengthsOnTheFloor
                ? [Texts.Say("floor.adjust-answer-json.the-file-says-nothing-of")]
                : Array.Empty<string>(),
            .. fit.Datum.MirrorIsAssumed ? [Texts.Say("floor.adjust-answer-json.the-readings-fit-the-mirror")] : Array.Empty<string>(),
            .. fit.ChiSquareProbability < UnexplainedBelow && answer.Suspects.Count == 0
                ? [NetworkWords.Unexplained(fit.Sigma0 ?? 1)]
                : Array.Empty<string>(),
            .. fit.TiedReadings().Select(group => NetworkWords.Tied(group, fit.Redundancy)),
        ];
    }

    private static void WriteFit(Utf8JsonWriter json, AdjustAnswer answer)
    {
        var fit = answer.Outcome.FitOrNull;
        var defect = (answer.Outcome as NetworkOutcome.Loose)?.Defect;
        var given = answer.Network.Network.Points.ToDictionary(p => p.Id, StringComparer.Ordinal);
        List(json, "points", fit?.Points ?? [], (j, point) => WritePoint(j, point, given[point.Id]));
        json.WriteStartObject("adjustment");
        json.WriteNumber("redundancy", fit?.Redundancy ?? 0);
        Number(json, "varianceFactor", fit?.VarianceFactor);
        Number(json, "sigma0", fit?.Sigma0);
        Number(json, "weightedSquares", fit?.WeightedSquares);
        Number(json, "chiSquareP", fit?.ChiSquareProbability);
        json.WriteEndObject();
        List(json, "readings", fit?.Readings ?? [], (j, reading) => WriteReading(j, reading, fit!.MostMoved(reading.Id)));
        List(json, "suspects", answer.Suspects, FloorAnswerJson.WriteSuspect);
        List(json, "tools", fit?.Tools ?? [], WriteTool);
        json.WriteStartObject("datum");
        List(json, "freeMotions", fit?.Datum.FreeMotions ?? [], (j, motion) => j.WriteStringValue(Word(motion)));
        json.WriteBoolean("mirrorIsAssumed", fit?.Datum.MirrorIsAssumed ?? false);
        json.WriteEndObject();
        List(json, "tied", fit?.TiedReadings() ?? [], (j, group) => Names(j, group));
        List(json, "floating", defect is null ? [] : NetworkWords.Floating(defect), WriteFloating);
    }

    private static void WritePoint(Utf8JsonWriter json, Engine.Adjustment.PointEstimate point, NetworkPoint given)
    {
        json.WriteStartObject();
        json.WriteString("id", point.Id);
        MillimetresIfKnown(json, "x", point.XMetres);
        MillimetresIfKnown(json, "y", point.YMetres);
        MillimetresIfKnown(json, "z", point.ZMetres);
        MillimetresIfKnown(json, "ux", point.UxMetres);
        MillimetresIfKnown(json, "uy", point.UyMetres);
        MillimetresIfKnown(json, "uz", point.UzMetres);
        (string, Coordinate, double?, double?)[] axes =
        [
            ("x", given.X, point.XMetres, point.UxMetres),
            ("y", given.Y, point.YMetres, point.UyMetres),
            ("z", given.Z, point.ZMetres, point.UzMetres),
        ];
        WriteGiven(json, axes);
        json.WriteEndObject();
    }

    /// <summary>A coordinate that is given with an uncertainty is an observation like any other: what the readings make of it is told as for a reading.</summary>
    private static void WriteGiven(Utf8JsonWriter json, IEnumerable<(string Name, Coordinate Given, double? Adjusted, double? U)> axes)
    {
        var uncertain = axes.Where(a => a is { Given: Coordinate.Uncertain, Adjusted: not null }).ToList();
        if (uncertain.Count == 0)
        {
            return;
        }

        json.WriteStartObject("given");
        foreach (var (name, coordinate, adjusted, u) in uncertain)
        {
            var given = (Coordinate.Uncertain)coordinate;
            var residual = adjusted!.Value - given.Metres;

            // Of a direct observation of an unknown the variance of the residual is sigma² - u² (Baarda 1968); of a fixed one nothing is left to check.
            var redundancy = Math.Max(0, 1 - (u!.Value * u.Value / (given.SigmaMetres * given.SigmaMetres)));
            json.WriteStartObject(name);
            Millimetres(json, "observed", given.Metres);
            Millimetres(json, "residual", residual);
            Millimetres(json, "sigma", given.SigmaMetres);
            Number(json, "redundancyNumber", redundancy);
            Number(json, "standardised", redundancy > Uncontrolled ? residual / (given.SigmaMetres * Math.Sqrt(redundancy)) : null);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteReading(Utf8JsonWriter json, ReadingEstimate reading, (string Point, double Metres)? moved)
    {
        json.WriteStartObject();
        json.WriteString("id", reading.Id);
        Millimetres(json, "observed", reading.ObservedMetres);
        Millimetres(json, "adjusted", reading.AdjustedMetres);
        Millimetres(json, "residual", reading.ResidualMetres);
        Millimetres(json, "sigma", reading.SigmaMetres);
        Number(json, "standardised", reading.Standardised);
        Number(json, "redundancyNumber", reading.RedundancyNumber);
        Millimetres(json, "minimalDetectable", reading.MinimalDetectableMetres);
        if (moved is var (point, metres))
        {
            json.WriteStartObject("hiddenError");
            json.WriteString("point", point);
            Millimetres(json, "moved", metres);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteTool(Utf8JsonWriter json, ToolEstimate tool)
    {
        json.WriteStartObject();
        json.WriteString("id", tool.Id);
        Millimetres(json, "zero", tool.ZeroMetres);
        Millimetres(json, "uZero", tool.ZeroSigmaMetres);
        Number(json, "scale", tool.Scale);
        Number(json, "uScale", tool.ScaleSigma);
        json.WriteEndObject();
    }

    private static void WriteFloating(Utf8JsonWriter json, FloatingGroup group)
    {
        json.WriteStartObject();
        json.WritePropertyName("points");
        Names(json, group.Points);
        json.WriteString("sentence", group.Sentence);
        json.WriteEndObject();
    }

    private static void Names(Utf8JsonWriter json, IEnumerable<string> names)
    {
        json.WriteStartArray();
        foreach (var name in names)
        {
            json.WriteStringValue(name);
        }

        json.WriteEndArray();
    }

    private static string Word(DatumMotion motion) =>
        motion switch
        {
            DatumMotion.ShiftX => "shift x",
            DatumMotion.ShiftY => "shift y",
            DatumMotion.ShiftZ => "shift z",
            DatumMotion.TurnAboutX => "turn about x",
            DatumMotion.TurnAboutY => "turn about y",
            _ => "turn about z",
        };

    private static void List<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(json, item);
        }

        json.WriteEndArray();
    }

    private static void MillimetresIfKnown(Utf8JsonWriter json, string name, double? metres)
    {
        if (metres is not null)
        {
            Millimetres(json, name, metres);
        }
    }

    // To the nanometre: the last binary digit's noise is no reading.
    private static void Millimetres(Utf8JsonWriter json, string name, double? metres) =>
        Number(json, name, metres is { } m && double.IsFinite(m) ? Math.Round(m * 1000, 6) + 0.0 : null);

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
