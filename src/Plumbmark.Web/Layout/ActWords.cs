using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Layout;

/// <summary>What was done, in words: for the undo button and the journal.</summary>
public static class ActWords
{
    /// <summary>A short sentence without a full stop.</summary>
    public static string For(Act act) =>
        act switch
        {
            Act.CarDescribed a => Say("act.car-described", Quoted(a.Car.Name)),
            Act.ToolDescribed a => Say("act.tool-described", a.Tool.Id),
            Act.ToolRemoved a => Say("act.tool-removed", a.Id),
            Act.PointDrawn a => Say("act.point-drawn", a.Point.Id),
            Act.PointRemoved a => Say("act.point-removed", a.Id),
            Act.LimitsChosen { Limits: null } => Say("act.limits-chosen.none"),
            Act.LimitsChosen => Say("act.limits-chosen"),
            Act.LevelRead { Level: null } => Say("act.level-read.none"),
            Act.LevelRead a => Say(
                "act.level-read",
                Texts.Count("count.stand", a.Level!.Stands.Count),
                Texts.Count("count.place", a.Level.Floor.Count)
            ),
            Act.ReadingTaken a => Say("act.reading-taken", a.Reading.Id, For(a.Reading)),
            Act.ReadingWithdrawn a => Say("act.reading-withdrawn", a.Id, a.Reason),
            Act.PressJobDescribed a => Say("act.press-job-described", Quoted(a.Job.Part.Name)),
            Act.PressJobRemoved => Say("act.press-job-removed"),
            Act.BiteMade a => Say("act.bite-made", a.Bite.Id, a.Bite.Travel.AsTyped),
            Act.BiteWithdrawn a => Say("act.bite-withdrawn", a.Id, a.Reason),
            Act.CrackTested a => Say("act.crack-tested", a.Test.Id, (a.Test.Found ? Say("act.crack-found") : Say("act.no-crack"))),
            Act.PhotoTaken a => Say("act.photo-taken", a.Photo.Point ?? Say("act.reading-n", a.Photo.Reading)),
            Act.PhotoPutAway a => Say("act.photo-put-away", a.Photo.Point ?? Say("act.reading-n", a.Photo.Reading)),
            Act.RoadDescribed => Say("act.road-described"),
            Act.PartFound a => Say("act.part-found", a.Part.Id, RoadNames.Of(a.Part.Part, a.Part.Side)),
            Act.PartTakenBack a => Say("act.part-taken-back", a.Id, a.Reason),
            Act.WheelRead a => Say("act.wheel-read", a.Reading.Id, WheelReadingWords.For(a.Reading)),
            Act.WheelReadingWithdrawn a => Say("act.wheel-reading-withdrawn", a.Id, a.Reason),
            Act.BenchPartLaid a => Say("act.bench-part-laid", PartWords.Title(a.Part)),
            Act.BenchPartPutAway a => Say("act.bench-part-put-away", a.Id),
            Act.BenchMeasured a => Say("act.bench-measured", a.Part, a.Measure.Id, Bench.MeasureWords.For(a.Measure)),
            Act.BenchMeasureWithdrawn a => Say("act.bench-measure-withdrawn", a.Part, a.Id, a.Reason),
            Act.VariantDescribed a => Say("act.variant-described", a.Variant.Name),
            Act.VariantRemoved a => Say("act.variant-removed", a.Id),
            Act.BookPagePut a => Say("act.book-page-put", Quoted(a.Page.Title), a.Page.Dimensions.Count),
            Act.BookPageRemoved a => Say("act.book-page-removed", a.Id),
            Act.FigureJudged a => Say("act.figure-judged", a.Dimension, a.Page, a.Status.Words.TrimEnd('.')),
            Act.FigureMeasured a => Say("act.figure-measured", a.Dimension, a.Page, a.Evidence.Car),
            Act.CarFitted => Say("act.car-fitted"),
            Act.Undone => Say("act.undone"),
            _ => Say("act.other"),
        };

    /// <summary>A reading in one line, as typed: <c>B.L to E.R, plan, 61 3/16</c>.</summary>
    public static string For(Reading reading) =>
        reading switch
        {
            Reading.Plan r => Say("reading.plan", r.From, r.To, Typed(r, r.Value.AsTyped)),
            Reading.Direct r => Say("reading.direct", r.From, r.To, Typed(r, r.Value.AsTyped)),
            Reading.Rise r => Say("reading.rise", r.From, r.To, r.Value.AsTyped),
            Reading.Height r => Say("reading.height", r.Point, r.Value.AsTyped),
            Reading.Offset r => Say("reading.offset", r.Point, r.From, r.To, r.Value.AsTyped),
            Reading.Drop { Distance: { } distance } r => Say("reading.drop", r.Point, distance.AsTyped),
            Reading.Drop { Dx: { } dx, Dy: { } dy } r => Say(
                "reading.drop.steps",
                r.Point,
                Step(dx, "act.step.forward", "act.step.back"),
                Step(dy, "act.step.left", "act.step.right")
            ),
            Reading.Indirect { Way: IndirectWay.Offset w } r => Say(
                "reading.indirect.offset",
                r.Point,
                Step(w.Dx, "act.step.forward", "act.step.back"),
                Step(w.Dy, "act.step.left", "act.step.right"),
                w.Mark
            ),
            Reading.Indirect { Way: IndirectWay.Midpoint w } r => Say("reading.indirect.midpoint", r.Point, w.From, w.To),
            Reading.Indirect { Way: IndirectWay.Bar w } r => Say("reading.indirect.bar", r.Point, w.StandOff.AsTyped, w.NearEnd, w.FarEnd),
            Reading.Indirect { Way: IndirectWay.HoleEdge w } r => Say("reading.indirect.hole-edge", r.Point, w.Diameter.AsTyped, w.Mark),
            _ => reading.Id,
        };

    private static string Step(Length step, string plus, string minus) =>
        step == Length.Zero ? Say(plus, 0)
        : step > Length.Zero ? Say(plus, step.AsTyped)
        : Say(minus, step.AsTyped.TrimStart('-', '−', ' '));

    private static string Typed(Reading reading, string value) =>
        reading.StartAt is { } start ? Say("act.n-started-at-n", value, start.AsTyped) : value;

    private static string Quoted(string name) => Say("act.quoted", name);
}
