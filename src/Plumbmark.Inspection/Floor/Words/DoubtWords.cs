using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Doubts;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>Doubted readings and points in trade words: what is doubted, which slip would explain it, and the one measurement that decides.</summary>
internal static class DoubtWords
{
    /// <summary>The suspects as the answer lists them.</summary>
    public static IReadOnlyList<Suspect> Of(CarFile car, FrameDoubts doubts, LengthWords words)
    {
        var readings = car.StandingReadings.ToDictionary(r => r.Id, StringComparer.Ordinal);
        return
        [
            .. doubts
                .Explanations.SelectMany(e => e.Doubted.Select(d => (Explanation: e, Doubted: d)))
                .DistinctBy(d => (d.Doubted.ReadingId, d.Doubted.Point))
                .Select(d => ToSuspect(d.Doubted, d.Explanation, doubts, readings, words)),
        ];
    }

    private static Suspect ToSuspect(
        Doubted doubted,
        Explanation explanation,
        FrameDoubts doubts,
        Dictionary<string, Reading> readings,
        LengthWords words
    )
    {
        var reading = doubted.ReadingId is { } id ? readings[id] : null;
        var what =
            reading is null ? Point(doubted, words)
            : doubts.IsSettled ? Settled(reading, doubted, Cause(doubted, explanation, readings, words), words)
            : Reading(reading, doubted, Cause(doubted, explanation, readings, words), words);
        var sentence = doubts.IsLocated ? what : $"{what} {Tied(doubts)}";
        return new Suspect(doubted.ReadingId, doubted.Point, Kind(doubted.Kind), doubted.SizeMetres, explanation.Odds, sentence)
        {
            IsSettled = doubts.IsSettled,
        };
    }

    private static string Tied(FrameDoubts doubts) =>
        doubts.Explanations.Count > 1
            ? Texts.Say("floor.doubt.something-is-wrong-but-not", doubts.Explanations.Count - 1)
            : Texts.Say("floor.doubt.something-is-wrong-but-not-enough-was-measured-to");

    private static string Point(Doubted doubted, LengthWords words) =>
        Texts.Say("floor.doubt.the-mark-of-stands-from", doubted.Point, words.Size(doubted.SizeMetres));

    private static string Reading(Reading reading, Doubted doubted, string cause, LengthWords words)
    {
        var off = Off(doubted, words);
        return reading switch
        {
            Reading.Drop r => Texts.Say("floor.doubt.one-drop-of-fell-from", r.Point, words.Size(doubted.SizeMetres)),
            Reading.Indirect r => Texts.Say(
                "floor.doubt.brought-down-by-stands-from",
                r.Point,
                Words.And([.. r.Way.Marks]),
                words.Size(doubted.SizeMetres)
            ),
            Reading.Height r => Texts.Say("floor.doubt.the-height-of-is-take", r.Point, r.Value.AsTyped, off, cause),
            _ => Texts.Say("floor.doubt.is-measure-again", Name(reading), Shown(reading), off, cause),
        };
    }

    private static string Settled(Reading reading, Doubted doubted, string cause, LengthWords words)
    {
        var name = reading is Reading.Height h ? Texts.Say("floor.doubt.the-height-of", h.Point) : Name(reading);
        return Texts.Say("floor.doubt.is-it-has-been-measured", name, Shown(reading), Off(doubted, words), cause);
    }

    private static string Off(Doubted doubted, LengthWords words) =>
        Texts.Say(
            "floor.doubt.than-the-other-readings-say",
            words.Size(doubted.SizeMetres),
            doubted.SizeMetres > 0 ? Texts.Say("floor.doubt.more") : Texts.Say("floor.doubt.less")
        );

    private static string Name(Reading reading) =>
        reading switch
        {
            Reading.Offset r => Texts.Say("floor.doubt.from-the-string-to", r.Point, r.From, r.To),
            _ => string.Join(" to ", reading.Points),
        };

    private static string Shown(Reading reading)
    {
        var shown = reading.Shown is { } length ? length.AsTyped : Texts.Say("floor.doubt.as-entered");
        return reading.StartAt is { } start ? Texts.Say("floor.doubt.from", shown, start.AsTyped) : shown;
    }

    private static string Cause(Doubted doubted, Explanation explanation, Dictionary<string, Reading> readings, LengthWords words) =>
        doubted.Kind == BlunderKind.RowsSwapped
        && explanation.Doubted.FirstOrDefault(d => d.ReadingId is not null && d.ReadingId != doubted.ReadingId)?.ReadingId is { } other
            ? Texts.Say(
                "floor.doubt.it-would-fit-in-the-row-of",
                readings[other] is Reading.Height h ? Texts.Say("floor.plan.the-height-of", h.Point) : Name(readings[other])
            )
            : Cause(doubted, words);

    private static string Cause(Doubted doubted, LengthWords words) =>
        doubted.Kind switch
        {
            BlunderKind.OneInch => Texts.Say("floor.doubt.exactly-one-inch-was-the"),
            BlunderKind.TenInches => Texts.Say("floor.doubt.exactly-ten-inches-was-the"),
            BlunderKind.OneFoot => Texts.Say("floor.doubt.exactly-a-foot-was-a"),
            BlunderKind.HundredMillimetres => Texts.Say("floor.doubt.exactly-100-mm-was-the"),
            BlunderKind.TenMillimetres => Texts.Say("floor.doubt.exactly-10-mm-was-a"),
            BlunderKind.StartGraduation => Texts.Say("floor.doubt.by-just-the-start-graduation"),
            BlunderKind.HalfHole => Texts.Say("floor.doubt.by-just-half-the-hole"),
            BlunderKind.TwiceOffset => Texts.Say("floor.doubt.by-twice-the-offset-has"),
            BlunderKind.DigitsSwapped => Texts.Say("floor.doubt.two-digits-may-have-changed", Meant(doubted, words)),
            BlunderKind.DigitMisread => Texts.Say("floor.doubt.one-digit-may-have-been", Meant(doubted, words)),
            BlunderKind.FractionOtherEnd => Texts.Say("floor.doubt.the-fraction-may-have-been", Meant(doubted, words)),
            BlunderKind.UnitConfused => Texts.Say("floor.doubt.inches-and-millimetres-may-have", Meant(doubted, words)),
            BlunderKind.PlanDirectConfused => doubted.Believed is Observation.DirectDistance
                ? Texts.Say("floor.doubt.it-would-fit-as-a")
                : Texts.Say("floor.doubt.it-would-fit-as-a-length-along-the-floor"),
            BlunderKind.SidesSwapped or BlunderKind.RowsSwapped => Swapped(doubted.Believed),
            _ => "",
        };

    private static string Meant(Doubted doubted, LengthWords words) =>
        doubted.Believed is { } believed ? Texts.Say("floor.doubt.would-fit", words.Of(believed.ValueMetres)) : ".";

    private static string Swapped(Observation? believed) =>
        believed switch
        {
            Observation.PlanDistance o => Texts.Say("floor.doubt.it-would-fit-as-to", o.From, o.To),
            Observation.DirectDistance o => Texts.Say("floor.doubt.it-would-fit-as-to", o.From, o.To),
            Observation.Height o => Texts.Say("floor.doubt.it-would-fit-as-the", o.Point),
            _ => Texts.Say("floor.doubt.points-may-have-been-exchanged"),
        };

    private static string Kind(BlunderKind kind) =>
        kind switch
        {
            BlunderKind.FreeAmount => "free",
            BlunderKind.OneInch => "inch",
            BlunderKind.TenInches => "ten-inches",
            BlunderKind.OneFoot => "foot",
            BlunderKind.HundredMillimetres => "100-mm",
            BlunderKind.TenMillimetres => "10-mm",
            BlunderKind.StartGraduation => "start",
            BlunderKind.HalfHole => "half-hole",
            BlunderKind.TwiceOffset => "twice-offset",
            BlunderKind.DigitsSwapped => "digits-swapped",
            BlunderKind.DigitMisread => "digit-misread",
            BlunderKind.FractionOtherEnd => "fraction-other-end",
            BlunderKind.UnitConfused => "unit",
            BlunderKind.PlanDirectConfused => "plan-direct",
            BlunderKind.SidesSwapped => "sides-swapped",
            BlunderKind.RowsSwapped => "rows-swapped",
            BlunderKind.PointOff => "point",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
