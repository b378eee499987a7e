using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>A line of a printed form on the screen: what it asks for, and what was kept of it since.</summary>
/// <param name="Line">The line as it is printed.</param>
/// <param name="Kept">The reading that answers it; null when none does.</param>
public sealed record FormLine(RoundLine Line, Reading? Kept)
{
    /// <summary>The field for what was read.</summary>
    public string Value => $"value-{Line.Number}";

    /// <summary>The field for where the tape started.</summary>
    public string Start => $"start-{Line.Number}";

    /// <summary>The field for the step forward of a drop.</summary>
    public string Forward => $"dx-{Line.Number}";

    /// <summary>The field for the step to the left of a drop.</summary>
    public string Left => $"dy-{Line.Number}";

    /// <summary>The field for a remark.</summary>
    public string Remark => $"note-{Line.Number}";

    /// <summary>Every field of the line.</summary>
    public IReadOnlyList<string> Fields =>
        Line.Kind switch
        {
            RoundKind.Drop => [Forward, Left, Remark],
            RoundKind.Plan or RoundKind.Direct => [Value, Start, Remark],
            _ => [Value, Remark],
        };

    /// <summary>The points as they are printed.</summary>
    public string Points => Line.To is { } to ? $"{Line.From} – {to}" : Line.From;

    /// <summary>The reading as it was typed, under a name still to be given; null when nothing is typed or something is wrong, with the faults told.</summary>
    public Reading? Typed(CarRequest request, FieldFaults faults)
    {
        if (Fields.All(f => request.Field(f).Length == 0))
        {
            return null;
        }

        var wrongBefore = faults.All.Count;
        var reading = Line.Kind == RoundKind.Drop ? Drop(request, faults) : Length(request, faults);
        var note = request.OptionalText(Remark, faults, most: 500);
        return faults.All.Count > wrongBefore || reading is null ? null : reading with { Note = note };
    }

    private Reading.Drop Drop(CarRequest request, FieldFaults faults)
    {
        var units = request.Car.File.Units;
        var dx = request.OptionalLength(Forward, units, faults, LengthSign.MayBeNegative);
        var dy = request.OptionalLength(Left, units, faults, LengthSign.MayBeNegative);
        foreach (var field in new[] { Forward, Left }.Where(f => request.Field(f).Length == 0))
        {
            faults.Add(field, Say("sheet.form.nothing-is-typed-here"));
        }

        return new Reading.Drop("", Line.From, null, dx, dy);
    }

    private Reading? Length(CarRequest request, FieldFaults faults)
    {
        var isTaped = Line.Kind is RoundKind.Plan or RoundKind.Direct;
        var units = request.Car.File.Units;
        var sign = isTaped ? LengthSign.NeverNegative : LengthSign.MayBeNegative;
        if (request.Field(Value).Length == 0)
        {
            faults.Add(Value, Say("sheet.form.nothing-is-typed-here-what"));
        }

        var value = request.OptionalLength(Value, units, faults, sign);
        var start = isTaped ? request.OptionalLength(Start, units, faults) : null;
        if (value is not { } read)
        {
            return null;
        }

        if (isTaped && read <= Engine.Lengths.Length.Zero)
        {
            faults.Add(Value, Say("sheet.form.found-no-length-at"));
        }

        if (start is { } from && from >= read)
        {
            faults.Add(Start, Say("sheet.form.the-tape-started-at", from.AsTyped, read.AsTyped));
        }

        return Line.Kind switch
        {
            RoundKind.Plan => new Reading.Plan("", Line.From, Line.To!, read) { StartAt = start },
            RoundKind.Direct => new Reading.Direct("", Line.From, Line.To!, read) { StartAt = start },
            RoundKind.Rise => new Reading.Rise("", Line.From, Line.To!, read),
            RoundKind.Height => new Reading.Height("", Line.From, read),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
