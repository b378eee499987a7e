using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>What stands in the form for a reading: picked on the drawing so far, or typed and not understood.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Point">The point of a height, a drop or an offset; empty when not picked.</param>
/// <param name="From">The first end; empty when not picked.</param>
/// <param name="To">The second end; empty when not picked.</param>
/// <param name="Value">The value as typed.</param>
/// <param name="Tool">The tool chosen.</param>
/// <param name="StartAt">The start graduation as typed.</param>
/// <param name="Dx">Forward step of a drop as typed.</param>
/// <param name="Dy">Leftward step of a drop as typed.</param>
/// <param name="Note">The note as typed.</param>
/// <param name="Faults">What is wrong.</param>
public sealed record EntryForm(
    EntryKind Kind,
    string Point,
    string From,
    string To,
    string Value,
    string Tool,
    string StartAt,
    string Dx,
    string Dy,
    string Note,
    FieldFaults Faults
)
{
    /// <summary>Whether the person walks the measuring round: then the next line is filled in.</summary>
    public bool IsOnRound { get; init; }

    /// <summary>Lines of the round that cannot be reached, with "!" between them.</summary>
    public string Skipped { get; init; } = "";

    /// <summary>The form as the address asks for it: picks so far, and the tool used last.</summary>
    public static EntryForm Asked(PageRequest request) =>
        new(
            EntryKind.Of(request.Query("kind")),
            request.Query("point"),
            request.Query("from"),
            request.Query("to"),
            "",
            request.Query("tool"),
            request.Query("startAt"),
            "",
            "",
            "",
            new FieldFaults()
        )
        {
            IsOnRound = request.Query("round").Length > 0,
            Skipped = Shortened(request.Query("skipped")),
        };

    /// <summary>The form as it was sent.</summary>
    public static EntryForm Sent(PageRequest request, FieldFaults faults) =>
        new(
            EntryKind.Of(request.Field("kind")),
            request.Field("point"),
            request.Field("from"),
            request.Field("to"),
            request.Field("value"),
            request.Field("tool"),
            request.Field("startAt"),
            request.Field("dx"),
            request.Field("dy"),
            request.Field("note"),
            faults
        )
        {
            IsOnRound = request.Field("round").Length > 0,
            Skipped = Shortened(request.Field("skipped")),
        };

    /// <summary>Whether every end is picked, so that the value comes next.</summary>
    public bool IsPicked =>
        Kind.Ends switch
        {
            EntryEnds.One => Point.Length > 0,
            EntryEnds.Two => From.Length > 0 && To.Length > 0,
            _ => Point.Length > 0 && From.Length > 0 && To.Length > 0,
        };

    /// <summary>What the next tap on the drawing picks.</summary>
    public string Asks =>
        (Kind.Ends, Point, From, To) switch
        {
            (EntryEnds.One, "", _, _) => Say("entry.tap-the-point"),
            (EntryEnds.PointAndTwo, "", _, _) => Say("entry.tap-the-point-beside"),
            (EntryEnds.PointAndTwo, _, "", _) => Say("entry.tap-where-the-string"),
            (EntryEnds.PointAndTwo, _, _, "") => Say("entry.tap-where-the-string-ends"),
            (EntryEnds.Two, _, "", _) => Say("entry.tap-the-point-where"),
            (EntryEnds.Two, _, _, "") => Say("entry.tap-the-point-where-it"),
            _ => Say("entry.picked-type-what-you"),
        };

    /// <summary>The form after a tap on a point.</summary>
    public EntryForm Tapped(string id) =>
        (Kind.Ends, IsPicked) switch
        {
            (EntryEnds.One, _) => this with { Point = id },
            (EntryEnds.Two, true) => this with { From = id, To = "" },
            (EntryEnds.Two, _) when From.Length == 0 => this with { From = id },
            (EntryEnds.Two, _) when From == id => this with { From = "" },
            (EntryEnds.Two, _) => this with { To = id },
            (_, true) => this with { Point = id, From = "", To = "" },
            _ when Point.Length == 0 => this with { Point = id },
            _ when Point == id => this with { Point = "" },
            _ when From.Length == 0 => this with { From = id },
            _ when From == id => this with { From = "" },
            _ => this with { To = id },
        };

    /// <summary>The form with nothing picked and nothing typed; kind, tool and round stay.</summary>
    public EntryForm Emptied() => this with { Point = "", From = "", To = "", Value = "", StartAt = "", Dx = "", Dy = "", Note = "" };

    /// <summary>The form on the round, past the line that stands in it now.</summary>
    public EntryForm PastThis() =>
        Emptied() with
        {
            Skipped = Skipped.Length == 0 ? RoundStep.NameOf(this) : $"{Skipped}!{RoundStep.NameOf(this)}",
        };

    /// <summary>The same points for another kind, as far as that kind has a use for them.</summary>
    public EntryForm As(EntryKind kind)
    {
        var first = From.Length > 0 ? From : Point;
        return kind.Ends switch
        {
            EntryEnds.One => this with { Kind = kind, Point = Point.Length > 0 ? Point : From, From = "", To = "" },
            EntryEnds.Two => this with { Kind = kind, From = first, Point = "" },
            _ => this with { Kind = kind },
        };
    }

    /// <summary>The address that shows the floor with this form.</summary>
    public string Address(long car)
    {
        var parts = new[]
        {
            ("kind", Kind.Word),
            ("point", Point),
            ("from", From),
            ("to", To),
            ("tool", Tool),
            ("startAt", StartAt),
            ("round", IsOnRound ? "1" : ""),
            ("skipped", Skipped),
        }
            .Where(p => p.Item2.Length > 0)
            .Select(p => $"{p.Item1}={Uri.EscapeDataString(p.Item2)}");
        return $"/cars/{car}/floor?{string.Join('&', parts)}";
    }

    /// <summary>The reading in the form, under a name; null when something is wrong, with the faults told.</summary>
    public static Reading? Read(CarRequest request, string id, FieldFaults faults)
    {
        var form = Sent(request, faults);
        var units = request.Car.File.Units;
        var sign = form.Kind.MayBeNegative ? LengthSign.MayBeNegative : LengthSign.NeverNegative;
        var reading = form.Kind.Word == "drop" ? ReadDrop(request, id, form, units) : ReadValue(request, id, form, units, sign);
        var start = form.Kind.HasStart ? request.OptionalLength("startAt", units, faults) : null;
        var tool = request.OptionalText("tool", faults);
        var note = request.OptionalText("note", faults, most: 500);
        form.CheckPoints(request.Car.File, start, reading);
        return faults.Any || reading is null ? null : reading with { StartAt = start, Tool = tool, Note = note };
    }

    /// <summary>As much as an address can carry; beyond that, what was skipped first is offered again.</summary>
    private static string Shortened(string skipped) => skipped.Length <= 1500 ? skipped : skipped[^1500..];

    private static Reading? ReadValue(CarRequest request, string id, EntryForm form, LengthUnit units, LengthSign sign)
    {
        if (request.RequiredLength("value", units, form.Faults, sign) is not { } value)
        {
            return null;
        }

        if (form.Kind.HasStart && value <= Length.Zero)
        {
            form.Faults.Add("value", Say("entry.found-no-length-at"));
        }

        return form.Kind.Word switch
        {
            "plan" => new Reading.Plan(id, form.From, form.To, value),
            "direct" => new Reading.Direct(id, form.From, form.To, value),
            "rise" => new Reading.Rise(id, form.From, form.To, value),
            "height" => new Reading.Height(id, form.Point, value),
            _ => new Reading.Offset(id, form.Point, form.From, form.To, value),
        };
    }

    private static Reading.Drop? ReadDrop(CarRequest request, string id, EntryForm form, LengthUnit units)
    {
        var faults = form.Faults;
        var distance = request.OptionalLength("value", units, faults);
        var dx = request.OptionalLength("dx", units, faults, LengthSign.MayBeNegative);
        var dy = request.OptionalLength("dy", units, faults, LengthSign.MayBeNegative);
        if (!faults.Any && (distance is null ? dx is null || dy is null : dx is not null || dy is not null))
        {
            faults.Add("value", Say("entry.write-either-the-distance"));
        }

        return faults.Any ? null : new Reading.Drop(id, form.Point, distance, dx, dy);
    }

    private void CheckPoints(CarFile car, Length? start, Reading? reading)
    {
        if (Kind.Ends is EntryEnds.One or EntryEnds.PointAndTwo)
        {
            CheckPoint(car, "point", Point);
        }

        if (Kind.Ends is EntryEnds.Two or EntryEnds.PointAndTwo)
        {
            CheckPoint(car, "from", From);
            CheckPoint(car, "to", To);
            if (From.Length > 0 && From == To)
            {
                Faults.Add("to", Say("entry.both-ends-are-a", From));
            }
        }

        var value = reading switch
        {
            Reading.Plan r => r.Value,
            Reading.Direct r => r.Value,
            _ => (Length?)null,
        };
        if (start is { } s && value is { } v && s >= v)
        {
            Faults.Add("startAt", Say("entry.the-tape-started-at", s.AsTyped, v.AsTyped));
        }
    }

    private void CheckPoint(CarFile car, string field, string id)
    {
        if (id.Length == 0)
        {
            Faults.Add(field, Say("entry.no-point-is-picked"));
        }
        else if (car.Frame.Point(id) is null)
        {
            Faults.Add(field, Say("entry.this-point-is-not"));
        }
    }
}
