using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Web.Layout;

/// <summary>What was done, in words: for the undo button and the journal.</summary>
public static class ActWords
{
    /// <summary>A short sentence without a full stop.</summary>
    public static string For(Act act) =>
        act switch
        {
            Act.CarDescribed a => $"car described as {Quoted(a.Car.Name)}",
            Act.ToolDescribed a => $"tool {a.Tool.Id} described",
            Act.ToolRemoved a => $"tool {a.Id} put away",
            Act.PointDrawn a => $"point {a.Point.Id} drawn",
            Act.PointRemoved a => $"point {a.Id} rubbed out",
            Act.LimitsChosen { Limits: null } => "limits taken away",
            Act.LimitsChosen => "limits chosen",
            Act.LevelRead { Level: null } => "level readings taken away",
            Act.LevelRead a =>
                $"level read at {Words.Count(a.Level!.Stands.Count, "stand")} and {Words.Count(a.Level.Floor.Count, "place")} of the floor",
            Act.ReadingTaken a => $"reading {a.Reading.Id}: {For(a.Reading)}",
            Act.ReadingWithdrawn a => $"reading {a.Id} taken back: {a.Reason}",
            Act.PressJobDescribed a => $"{Quoted(a.Job.Part.Name)} in the press described",
            Act.PressJobRemoved => "a part put away from the press",
            Act.BiteMade a => $"bite {a.Bite.Id} made: travel {a.Bite.Travel.AsTyped}",
            Act.BiteWithdrawn a => $"bite {a.Id} taken back: {a.Reason}",
            Act.CrackTested a => $"crack test {a.Test.Id}: {(a.Test.Found ? "a crack was found" : "nothing found")}",
            Act.PhotoTaken a => $"photo of {a.Photo.Point ?? $"reading {a.Photo.Reading}"} taken",
            Act.PhotoPutAway a => $"photo of {a.Photo.Point ?? $"reading {a.Photo.Reading}"} put away",
            Act.RoadDescribed => "suspension described",
            Act.PartFound a => $"found {a.Part.Id}: {RoadNames.Of(a.Part.Part, a.Part.Side)}",
            Act.PartTakenBack a => $"finding {a.Id} taken back: {a.Reason}",
            Act.WheelRead a => $"wheel reading {a.Reading.Id}: {WheelReadingWords.For(a.Reading)}",
            Act.WheelReadingWithdrawn a => $"wheel reading {a.Id} taken back: {a.Reason}",
            Act.BenchPartLaid a => $"{PartWords.Title(a.Part)} on the bench, its card written",
            Act.BenchPartPutAway a => $"part {a.Id} put away",
            Act.BenchMeasured a => $"{a.Part}, measure {a.Measure.Id}: {Bench.MeasureWords.For(a.Measure)}",
            Act.BenchMeasureWithdrawn a => $"{a.Part}, measure {a.Id} taken back: {a.Reason}",
            Act.VariantDescribed a => $"type {a.Variant.Name} described",
            Act.VariantRemoved a => $"type {a.Id} struck out",
            Act.BookPagePut a => $"book page {Quoted(a.Page.Title)} put with the car, {a.Page.Dimensions.Count} figures",
            Act.BookPageRemoved a => $"book page {a.Id} taken away",
            Act.FigureJudged a => $"figure {a.Dimension} of book page {a.Page}: {a.Status.Words.TrimEnd('.')}",
            Act.FigureMeasured a => $"figure {a.Dimension} of book page {a.Page} measured on {a.Evidence.Car}",
            Act.CarFitted => "what the car is fitted with told",
            Act.Undone => "undone",
            _ => "something of another room",
        };

    /// <summary>A reading in one line, as typed: <c>B.L to E.R, plan, 61 3/16</c>.</summary>
    public static string For(Reading reading) =>
        reading switch
        {
            Reading.Plan r => $"{r.From} to {r.To}, plan, {Typed(r, r.Value.AsTyped)}",
            Reading.Direct r => $"{r.From} to {r.To}, direct, {Typed(r, r.Value.AsTyped)}",
            Reading.Rise r => $"{r.From} to {r.To}, rise, {r.Value.AsTyped}",
            Reading.Height r => $"{r.Point}, height, {r.Value.AsTyped}",
            Reading.Offset r => $"{r.Point} from the string {r.From} to {r.To}, {r.Value.AsTyped}",
            Reading.Drop { Distance: { } distance } r => $"{r.Point} dropped again, {distance.AsTyped} from the first mark",
            Reading.Drop { Dx: { } dx, Dy: { } dy } r =>
                $"{r.Point} dropped again, {Step(dx, "forward", "back")} and {Step(dy, "left", "right")} of the first mark",
            Reading.Indirect { Way: IndirectWay.Offset w } r =>
                $"{r.Point} brought down beside itself: {Step(w.Dx, "forward", "back")} and {Step(w.Dy, "left", "right")} of mark {w.Mark}",
            Reading.Indirect { Way: IndirectWay.Midpoint w } r => $"{r.Point} brought down half way between marks {w.From} and {w.To}",
            Reading.Indirect { Way: IndirectWay.Bar w } r =>
                $"{r.Point} brought down by a bar, {w.StandOff.AsTyped} inside mark {w.NearEnd}, toward {w.FarEnd}",
            Reading.Indirect { Way: IndirectWay.HoleEdge w } r =>
                $"{r.Point} brought down from the edge of its hole of {w.Diameter.AsTyped}, mark {w.Mark}",
            _ => reading.Id,
        };

    private static string Step(Length step, string plus, string minus) =>
        step == Length.Zero ? $"0 {plus}"
        : step > Length.Zero ? $"{step.AsTyped} {plus}"
        : $"{step.AsTyped.TrimStart('-', '−', ' ')} {minus}";

    private static string Typed(Reading reading, string value) =>
        reading.StartAt is { } start ? $"{value} started at {start.AsTyped}" : value;

    private static string Quoted(string name) => $"“{name}”";
}
