using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Store;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using Plumbmark.Web.Shed;

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

    /// <summary>Something that can be undone or put back.</summary>
    public sealed record StepBack(long Together, string Words);

    /// <summary>How many of the readings stand.</summary>
    public int Standing => Car.File.StandingReadings.Count();

    /// <summary>The floor for a request; with a form sent before, it is shown again.</summary>
    public static FloorView Of(CarRequest request, EntryForm? sent = null)
    {
        var car = request.Car;
        var answer = request.Answers().For(car);
        var form = WithTool(sent ?? RoundStep.Fill(EntryForm.Asked(request), car.File), car.File);
        return new FloorView
        {
            Car = car,
            Answer = answer,
            Form = form,
            Round = RoundStep.Of(car.File, form),
            Picker = PointPicker.Svg(car.File, car.Id, form, answer),
            Plan = SvgWriter.Write(FloorPlanDrawing.Of(car.File, answer)),
            Elevations =
            [
                ("From the side", SvgWriter.Write(FloorSideDrawing.Of(car.File, answer))),
                ("From an end", SvgWriter.Write(FloorEndDrawing.Of(car.File, answer))),
            ],
            Points = [.. car.File.Frame.Points.Select(p => (p.Id, p.Label is null ? p.Id : $"{p.Id} · {p.Label}"))],
            Tools = [.. car.File.Tools.Select(t => (t.Id, ToolWords.For(t)))],
            Pairs = PairRow.Of(car.File, answer),
            Readings = ReadingLine.Of(car.File, car.Id, answer),
            Next = NextLine.Of(answer, car.Id, form.Tool),
            Undo = UndoChanges.Last(car) is { } last ? new StepBack(last.Together, WordsOf(car, last)) : null,
            PutBack = UndoChanges.LastUndo(car) is { } undo ? new StepBack(undo.Together, "put back what was undone") : null,
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

    private static string WordsOf(OpenCar car, KeptEntry last)
    {
        var count = car.Entries.Count(e => e.Together == last.Together);
        var first = car.Entries.First(e => e.Together == last.Together);
        return count == 1 ? ActWords.For(first.Entry.Act) : $"{ActWords.For(first.Entry.Act)}, and {count - 1} more with it";
    }
}
