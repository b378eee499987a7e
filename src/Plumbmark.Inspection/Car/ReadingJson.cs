using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car;

/// <summary>A reading in a car file: the fields common to all, and those of its kind.</summary>
internal static class ReadingJson
{
    private static readonly Dictionary<string, bool> s_above = new(StringComparer.Ordinal) { ["level"] = false, ["floor"] = true };

    public static Reading? Read(Fields fields)
    {
        var id = fields.RequiredText("id") ?? "";
        var kindPart = fields.Required("kind");
        var reading = kindPart?.Text switch
        {
            "plan" => Between(fields, LengthBound.Positive, (from, to, value) => new Reading.Plan(id, from, to, value)),
            "direct" => Between(fields, LengthBound.Positive, (from, to, value) => new Reading.Direct(id, from, to, value)),
            "rise" => Between(fields, LengthBound.Any, (from, to, value) => new Reading.Rise(id, from, to, value)),
            "height" => ReadHeight(fields, id),
            "offset" => ReadOffset(fields, id),
            "drop" => ReadDrop(fields, id),
            "indirect" => IndirectJson.Read(fields, id),
            _ => RefuseKind(fields, kindPart),
        };
        var tool = fields.OptionalText("tool");
        var sigma = fields.OptionalLength("sigma", LengthBound.Positive);
        var startAt = fields.OptionalLength("startAt");
        var note = fields.OptionalText("note");
        var withdrawn = fields.OptionalText("withdrawn");
        // Only a known kind tells which fields are known; a faulty value beside an unknown field must not hide it.
        if (reading is not null || kindPart?.Text is "plan" or "direct" or "rise" or "height" or "offset" or "drop")
        {
            fields.RefuseOthers();
        }

        if (startAt is not null && reading is not (null or Reading.Plan or Reading.Direct))
        {
            fields.Faults.Add(fields.Optional("startAt")!, Texts.Say("car.reading-json.a-start-graduation-belongs-to"));
        }

        return reading is null || id.Length == 0
            ? null
            : reading with
            {
                Tool = tool,
                Sigma = sigma,
                StartAt = startAt,
                Note = note,
                Withdrawn = withdrawn,
            };
    }

    public static void Write(Utf8JsonWriter json, Reading reading, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", reading.Id);
        switch (reading)
        {
            case Reading.Plan r:
                WriteBetween(json, "plan", r.From, r.To, r.Value, units);
                break;
            case Reading.Direct r:
                WriteBetween(json, "direct", r.From, r.To, r.Value, units);
                break;
            case Reading.Rise r:
                WriteBetween(json, "rise", r.From, r.To, r.Value, units);
                break;
            case Reading.Height r:
                json.WriteString("kind", "height");
                json.WriteString("point", r.Point);
                json.WriteOptional("value", r.Value, units);
                json.WriteOptional("above", r.IsAboveFloor ? "floor" : null);
                break;
            case Reading.Offset r:
                json.WriteString("kind", "offset");
                json.WriteString("point", r.Point);
                json.WriteString("from", r.From);
                json.WriteString("to", r.To);
                json.WriteOptional("value", r.Value, units);
                break;
            case Reading.Indirect r:
                IndirectJson.Write(json, r, units);
                break;
            case Reading.Drop r:
                json.WriteString("kind", "drop");
                json.WriteString("point", r.Point);
                json.WriteOptional("value", r.Distance, units);
                json.WriteOptional("dx", r.Dx, units);
                json.WriteOptional("dy", r.Dy, units);
                break;
        }

        json.WriteOptional("tool", reading.Tool);
        json.WriteOptional("startAt", reading.StartAt, units);
        json.WriteOptional("sigma", reading.Sigma, units);
        json.WriteOptional("note", reading.Note);
        json.WriteOptional("withdrawn", reading.Withdrawn);
        json.WriteEndObject();
    }

    private static Reading? Between(Fields fields, LengthBound bound, Func<string, string, Length, Reading> make)
    {
        var from = fields.RequiredText("from");
        var to = fields.RequiredText("to");
        var value = fields.RequiredLength("value", bound);
        if (from is not null && from == to)
        {
            fields.Faults.Add(fields.Part, Texts.Say("car.reading-json.both-ends-are-a-reading", from));
            return null;
        }

        return from is null || to is null || value is not { } length ? null : make(from, to, length);
    }

    private static Reading? ReadHeight(Fields fields, string id)
    {
        var point = fields.RequiredText("point");
        var value = fields.RequiredLength("value", LengthBound.Any);
        var isAboveFloor = fields.OptionalWord("above", s_above) ?? false;
        return point is null || value is not { } length ? null : new Reading.Height(id, point, length) { IsAboveFloor = isAboveFloor };
    }

    private static Reading? ReadOffset(Fields fields, string id)
    {
        var point = fields.RequiredText("point");
        return
            Between(fields, LengthBound.Any, (from, to, value) => new Reading.Offset(id, point ?? "", from, to, value)) is { } offset
            && point is not null
            ? offset
            : null;
    }

    private static Reading? ReadDrop(Fields fields, string id)
    {
        var point = fields.RequiredText("point");
        var distance = fields.OptionalLength("value");
        var dx = fields.OptionalLength("dx", LengthBound.Any);
        var dy = fields.OptionalLength("dy", LengthBound.Any);
        if (distance is null && (dx is null || dy is null))
        {
            fields.Faults.Add(fields.Part, Texts.Say("car.reading-json.a-repeat-drop-needs-either"));
            return null;
        }

        if (distance is not null && (dx is not null || dy is not null))
        {
            fields.Faults.Add(fields.Part, Texts.Say("car.reading-json.a-repeat-drop-has-either"));
            return null;
        }

        return point is null ? null : new Reading.Drop(id, point, distance, dx, dy);
    }

    private static Reading? RefuseKind(Fields fields, JsonPart? kind)
    {
        if (kind is not null)
        {
            fields.Faults.Add(kind, Texts.Say("car.reading-json.found-one-of-plan-direct", kind.Describe()));
        }

        return null;
    }

    private static void WriteBetween(Utf8JsonWriter json, string kind, string from, string to, Length value, LengthUnit units)
    {
        json.WriteString("kind", kind);
        json.WriteString("from", from);
        json.WriteString("to", to);
        json.WriteOptional("value", value, units);
    }
}
