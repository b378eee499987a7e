using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Store;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>A printed form on the screen, line by line in the order of the paper.</summary>
/// <param name="Car">The car.</param>
/// <param name="Number">The form's number.</param>
/// <param name="Lines">Its lines.</param>
/// <param name="Typed">What was typed and not kept, by field.</param>
/// <param name="Faults">What is wrong, by field.</param>
public sealed record FormInView(
    OpenCar Car,
    FormNumber Number,
    IReadOnlyList<FormLine> Lines,
    IReadOnlyDictionary<string, string> Typed,
    FieldFaults Faults
)
{
    /// <summary>The field for the number.</summary>
    public const string NumberField = "number";

    /// <summary>The field for the tool that lengths were measured with.</summary>
    public const string TapeField = "tape";

    /// <summary>The field for the tool that heights were measured with.</summary>
    public const string LevelField = "level";

    /// <summary>The form whose number the address has; the one that would be printed now when it has none. Null for a number of no form.</summary>
    public static FormInView? Of(CarRequest request)
    {
        var text = request.Query(NumberField);
        var number =
            text.Length > 0
                ? FormNumber.Read(text, request.Car.Sequence)
                : new FormNumber(request.Car.Sequence, FormNumber.ScopeOf(request.Query("ask")));
        return number is { } known ? Of(request, known, new FieldFaults()) : null;
    }

    /// <summary>The form of that number.</summary>
    public static FormInView Of(CarRequest request, FormNumber number, FieldFaults faults)
    {
        var then = Moment.At(request.Car, number.Sequence);
        var round = MeasuringRound.Of(then, number.Scope);
        var kept = MeasuringRound.Answered(round, then, request.Car.File);
        var lines = round.Select(l => new FormLine(l, kept.GetValueOrDefault(l.Number))).ToList();
        string[] fields = [NumberField, TapeField, LevelField, .. lines.SelectMany(l => l.Fields)];
        return new FormInView(request.Car, number, lines, fields.ToDictionary(f => f, request.Field, StringComparer.Ordinal), faults);
    }

    /// <summary>What stands in a field.</summary>
    public string TypedIn(string field) => Typed.GetValueOrDefault(field, "");

    /// <summary>The first line that nothing was kept of, where typing goes on; 0 when there is none.</summary>
    public int NextNumber => Lines.FirstOrDefault(l => l.Kept is null)?.Line.Number ?? 0;

    /// <summary>The tools to choose from.</summary>
    public IReadOnlyList<(string Value, string Text)> Tools => [.. Car.File.Tools.Select(t => (t.Id, ToolWords.For(t)))];

    /// <summary>What was kept of a line, as it was typed.</summary>
    public static string KeptWords(Reading reading)
    {
        var value = reading switch
        {
            Reading.Plan r => r.Value.AsTyped,
            Reading.Direct r => r.Value.AsTyped,
            Reading.Rise r => r.Value.AsTyped,
            Reading.Height r => r.Value.AsTyped,
            Reading.Drop { Distance: { } distance } => distance.AsTyped,
            Reading.Drop r => Say("sheet.form-in.n-forward-n-left", r.Dx?.AsTyped, r.Dy?.AsTyped),
            _ => "",
        };
        return reading.StartAt is { } start ? Say("sheet.form-in.n-from-n", value, start.AsTyped) : value;
    }
}
