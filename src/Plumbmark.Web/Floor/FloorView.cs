using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using Plumbmark.Web.Shed;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>What the floor shows: the answer, the drawing, the form for the next reading, and everything behind the answer.</summary>
public sealed record FloorView
{
    /// <summary>The car.</summary>
    public required OpenCar Car { get; init; }

    /// <summary>What its readings say.</summary>
    public required FloorAnswer Answer { get; init; }

    /// <summary>What stands in the form.</summary>
    public required EntryForm Form { get; init; }

    /// <summary>What is left of the measuring round.</summary>
    public required RoundStep Round { get; init; }

    /// <summary>The drawing to pick points on, as SVG.</summary>
    public required string Picker { get; init; }

    /// <summary>The frame from above as the readings have it, as SVG.</summary>
    public required string Plan { get; init; }

    /// <summary>The frame from the side and from the front, each with its title, as SVG.</summary>
    public required IReadOnlyList<(string Title, string Svg)> Elevations { get; init; }

    /// <summary>Points to choose from a list.</summary>
    public required IReadOnlyList<(string, string)> Points { get; init; }

    /// <summary>Tools to choose from a list.</summary>
    public required IReadOnlyList<(string, string)> Tools { get; init; }

    /// <summary>Left against right.</summary>
    public required IReadOnlyList<PairRow> Pairs { get; init; }

    /// <summary>Every reading, newest first.</summary>
    public required IReadOnlyList<ReadingLine> Readings { get; init; }

    /// <summary>What to measure next.</summary>
    public required IReadOnlyList<NextLine> Next { get; init; }

    /// <summary>What was done last and may be undone; null when there is nothing.</summary>
    public required StepBack? Undo { get; init; }

    /// <summary>What was undone last and may be put back; null when there is nothing.</summary>
    public required StepBack? PutBack { get; init; }

    /// <summary>The limits in words; null when none is known.</summary>
    public required string? LimitWords { get; init; }

    /// <summary>An example of a value in the car's unit.</summary>
    public required string Example { get; init; }

    /// <summary>How far the job has come; null before a pair is drawn.</summary>
    public required FloorProgress? Progress { get; init; }

    /// <summary>What the form asks for now, large: the ends of the line that stands in it.</summary>
    public required string NowWords { get; init; }

    /// <summary>The last reading to be said aloud; null when the last act was none.</summary>
    public required string? Spoken { get; init; }

    /// <summary>The last reading measured again, and its points dropped again, each with its address.</summary>
    public required IReadOnlyList<(string Words, string Address)> Again { get; init; }

    /// <summary>A line that was not understood, to be put right.</summary>
    public required string QuickText { get; init; }

    /// <summary>How a line may look, with points of this frame.</summary>
    public required string QuickHint { get; init; }

    /// <summary>Something that can be undone or put back.</summary>
    public sealed record StepBack(long Together, string Words);

    /// <summary>How many of the readings stand.</summary>
    public int Standing => Car.File.StandingReadings.Count();

    /// <summary>The floor for a request; with a form sent before, it is shown again.</summary>
    public static FloorView Of(CarRequest request, EntryForm? sent = null)
    {
        var car = request.Car;
        var answer = request.Answers().ForEntry(car);
        var form = WithTool(sent ?? RoundStep.Fill(EntryForm.Asked(request), car.File), car.File);
        var options = new FloorDrawingOptions(HrefOf: id => $"/cars/{car.Id}/points/{Uri.EscapeDataString(id)}/story");
        var lastAct = UndoChanges.Last(car);
        var lastTaken = (lastAct?.Entry.Act as Act.ReadingTaken)?.Reading;
        return new FloorView
        {
            Car = car,
            Answer = answer,
            Form = form,
            Round = RoundStep.Of(car.File, form),
            Picker = PointPicker.Svg(car.File, car.Id, form, answer),
            Plan = SvgWriter.Write(FloorPlanDrawing.Of(car.File, answer, options)),
            Elevations =
            [
                (Say("floor.from-the-side"), SvgWriter.Write(FloorSideDrawing.Of(car.File, answer, options))),
                (Say("floor.from-an-end"), SvgWriter.Write(FloorEndDrawing.Of(car.File, answer, options))),
            ],
            Points = [.. car.File.Frame.Points.Select(p => (p.Id, p.Label is null ? p.Id : $"{p.Id} · {p.Label}"))],
            Tools = [.. car.File.Tools.Select(t => (t.Id, ToolWords.For(t)))],
            Pairs = PairRow.Of(car.File, answer),
            Readings = ReadingLine.Of(car.File, car.Id, answer),
            Next = NextLine.Of(answer, car.Id, form.Tool),
            Progress = FloorProgress.Of(car.File),
            NowWords = NowOf(form),
            Spoken = lastTaken is null ? null : SpokenOf(lastTaken),
            Again = lastTaken is null ? [] : AgainOf(lastTaken, car.Id, form),
            QuickText = request.Field("line"),
            QuickHint = QuickHintOf(car.File),
            Undo = lastAct is { } last ? new StepBack(last.Together, WordsOf(car, last)) : null,
            PutBack = UndoChanges.LastUndo(car) is { } undo ? new StepBack(undo.Together, Say("floor.put-back-what-was")) : null,
            LimitWords = LimitsView.Words(car.File.Frame.Limits),
            Example = car.File.Units == LengthUnit.Inch ? "47 5/8" : "1210",
        };
    }

    /// <summary>The tool used last, or the first that fits, when the address names none.</summary>
    private static EntryForm WithTool(EntryForm form, CarFile car)
    {
        if (form.Tool.Length > 0)
        {
            return form;
        }

        bool Fits(ToolKind kind) => kind is ToolKind.Level or ToolKind.Laser == form.Kind.Word is "height" or "rise";
        return form with { Tool = car.Tools.FirstOrDefault(t => Fits(t.Kind))?.Id ?? "" };
    }

    private static string NowOf(EntryForm form) =>
        form.Kind.Word switch
        {
            "height" => Texts.Say("entry.height-of", form.Point),
            "drop" => Texts.Say("entry.drop-of", form.Point),
            "offset" => Texts.Say("entry.offset-of", form.Point, form.From, form.To),
            _ => Texts.Say("entry.length-of", form.From, form.To),
        };

    /// <summary>As a voice says it: B left to E right.</summary>
    private static string SpokenOf(Reading reading) =>
        $"{reading.Id}: {ActWords.For(reading)}"
            .Replace(".L", $" {Texts.Say("spoken.left")}", StringComparison.Ordinal)
            .Replace(".R", $" {Texts.Say("spoken.right")}", StringComparison.Ordinal);

    private static IReadOnlyList<(string, string)> AgainOf(Reading last, long car, EntryForm now)
    {
        string Kept(string address) => now.IsOnRound ? address.Replace("?", "?round=1&", StringComparison.Ordinal) : address;
        var drops = last is Reading.Plan or Reading.Offset or Reading.Drop ? last.Points.Take(2) : [];
        return
        [
            (Texts.Say("entry.same-again"), Kept(ReadingLine.AgainAddressOf(last, car))),
            .. drops.Select(p =>
                (
                    Texts.Say("entry.drop-again", p),
                    Kept(
                        $"{(now.Emptied() with { Kind = EntryKind.Of("drop"), Point = p, Tool = last.Tool ?? "", IsOnRound = false }).Address(car)}#value"
                    )
                )
            ),
        ];
    }

    private static string QuickHintOf(CarFile car)
    {
        var pairs = car.Frame.Points.Where(p => p.Id.EndsWith(".L", StringComparison.Ordinal)).Select(p => p.Id[..^2]).ToList();
        var (a, b) = pairs.Count > 2 ? (pairs[1], pairs[2]) : ("B", "C");
        return car.Units == LengthUnit.Inch
            ? Texts.Say("quick.hint", $"{a}L {b}R 61 3/16", $"{a}-{b} R 48 7/8", $"{a}L 13 1/16")
            : Texts.Say("quick.hint", $"{a}L {b}R 1554", $"{a}-{b} R 1241.5", $"{a}L 332");
    }

    private static string WordsOf(OpenCar car, KeptEntry last)
    {
        var count = car.Entries.Count(e => e.Together == last.Together);
        var first = car.Entries.First(e => e.Together == last.Together);
        return count == 1 ? ActWords.For(first.Entry.Act) : Say("floor.and-more-with-it", ActWords.For(first.Entry.Act), count - 1);
    }
}
