using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Doubts;

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
            : doubts.IsSettled ? Settled(reading, doubted, words)
            : Reading(reading, doubted, words);
        var sentence = doubts.IsLocated ? what : $"{what} {Tied(doubts)}";
        return new Suspect(doubted.ReadingId, doubted.Point, Kind(doubted.Kind), doubted.SizeMetres, explanation.Odds, sentence)
        {
            IsSettled = doubts.IsSettled,
        };
    }

    private static string Tied(FrameDoubts doubts) =>
        doubts.Explanations.Count > 1
            ? $"Something is wrong, but not enough was measured to say which: it may as well be one of {doubts.Explanations.Count - 1} others."
            : "Something is wrong, but not enough was measured to say what.";

    private static string Point(Doubted doubted, LengthWords words) =>
        $"The mark of {doubted.Point} stands {words.Size(doubted.SizeMetres)} from where the rest puts it: a bad drop, or the mark moved. Drop {doubted.Point} again.";

    private static string Reading(Reading reading, Doubted doubted, LengthWords words)
    {
        var off = Off(doubted, words);
        return reading switch
        {
            Reading.Drop r => $"One drop of {r.Point} fell {words.Size(doubted.SizeMetres)} from the others. Drop {r.Point} again.",
            Reading.Indirect r =>
                $"{r.Point}, brought down by {Words.And([.. r.Way.Marks])}, stands {words.Size(doubted.SizeMetres)} from where the rest puts it. A step left out or with the wrong sign looks like that: bring {r.Point} down again.",
            Reading.Height r => $"The height of {r.Point}, {r.Value.AsTyped}, is {off}.{Cause(doubted, words)} Take it again.",
            _ => $"{Name(reading)}, {Shown(reading)}, is {off}.{Cause(doubted, words)} Measure {Name(reading)} again.",
        };
    }

    private static string Settled(Reading reading, Doubted doubted, LengthWords words)
    {
        var name = reading is Reading.Height h ? $"The height of {h.Point}" : Name(reading);
        return $"{name}, {Shown(reading)}, is {Off(doubted, words)}.{Cause(doubted, words)} It has been measured again since, and the repeat agrees with the rest: the first is left out.";
    }

    private static string Off(Doubted doubted, LengthWords words) =>
        $"{words.Size(doubted.SizeMetres)} {(doubted.SizeMetres > 0 ? "more" : "less")} than the other readings say";

    private static string Name(Reading reading) =>
        reading switch
        {
            Reading.Offset r => $"{r.Point} from the string {r.From} to {r.To}",
            _ => string.Join(" to ", reading.Points),
        };

    private static string Shown(Reading reading)
    {
        var shown = reading.Shown is { } length ? length.AsTyped : "as entered";
        return reading.StartAt is { } start ? $"{shown} from {start.AsTyped}" : shown;
    }

    private static string Cause(Doubted doubted, LengthWords words) =>
        doubted.Kind switch
        {
            BlunderKind.OneInch => " Exactly one inch: was the tape held at its 1 in mark?",
            BlunderKind.TenInches => " Exactly ten inches: was the tape held at its 10 in mark?",
            BlunderKind.OneFoot => " Exactly a foot: was a foot miscounted?",
            BlunderKind.HundredMillimetres => " Exactly 100 mm: was the tape held at its 100 mm mark?",
            BlunderKind.TenMillimetres => " Exactly 10 mm: was a centimetre miscounted?",
            BlunderKind.StartGraduation => " By just the start graduation: did the tape start at its zero?",
            BlunderKind.HalfHole => " By just half the hole: was it taken to the edge instead of the centre?",
            BlunderKind.TwiceOffset => " By twice the offset: has it the wrong sign?",
            BlunderKind.DigitsSwapped => $" Two digits may have changed places{Meant(doubted, words)}",
            BlunderKind.DigitMisread => $" One digit may have been misread{Meant(doubted, words)}",
            BlunderKind.FractionOtherEnd => $" The fraction may have been counted from the other end of the inch{Meant(doubted, words)}",
            BlunderKind.UnitConfused => $" Inches and millimetres may have been confused{Meant(doubted, words)}",
            BlunderKind.PlanDirectConfused => doubted.Believed is Observation.DirectDistance
                ? " It would fit as a length from point to point: was it taken in the air, not along the floor?"
                : " It would fit as a length along the floor: was it taken between the marks?",
            BlunderKind.SidesSwapped or BlunderKind.RowsSwapped => Swapped(doubted.Believed),
            _ => "",
        };

    private static string Meant(Doubted doubted, LengthWords words) =>
        doubted.Believed is { } believed ? $": {words.Of(believed.ValueMetres)} would fit." : ".";

    private static string Swapped(Observation? believed) =>
        believed switch
        {
            Observation.PlanDistance o => $" It would fit as {o.From} to {o.To}: were points exchanged?",
            Observation.DirectDistance o => $" It would fit as {o.From} to {o.To}: were points exchanged?",
            Observation.Height o => $" It would fit as the height of {o.Point}: were points exchanged?",
            _ => " Points may have been exchanged.",
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
