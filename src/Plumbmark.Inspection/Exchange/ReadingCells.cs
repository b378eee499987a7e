using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Exchange;

/// <summary>The cells of one reading by field: texts as they are, lengths as typed.</summary>
internal static class ReadingCells
{
    /// <summary>Fields that hold a person's own words, which a spreadsheet must not take for a formula.</summary>
    public static readonly IReadOnlySet<string> Texts = new HashSet<string>(StringComparer.Ordinal)
    {
        "id",
        "point",
        "from",
        "to",
        "tool",
        "note",
        "withdrawn",
    };

    public static IReadOnlyDictionary<string, string?> Of(Reading reading, LengthUnit units)
    {
        string? Length(Length? length) => length is { } value ? LengthPart.TextOf(value, units) : null;
        var (kind, point, from, to, value) = reading switch
        {
            Reading.Plan r => ("plan", (string?)null, (string?)r.From, (string?)r.To, (Length?)r.Value),
            Reading.Direct r => ("direct", null, r.From, r.To, r.Value),
            Reading.Rise r => ("rise", null, r.From, r.To, r.Value),
            Reading.Height r => ("height", r.Point, null, null, r.Value),
            Reading.Offset r => ("offset", r.Point, r.From, r.To, r.Value),
            Reading.Drop r => ("drop", r.Point, null, null, r.Distance),
            Reading.Indirect { Way: IndirectWay.Midpoint w } r => ("indirect", r.Point, w.From, w.To, null),
            Reading.Indirect { Way: IndirectWay.Offset w } r => ("indirect", r.Point, w.Mark, null, null),
            Reading.Indirect { Way: IndirectWay.HoleEdge w } r => ("indirect", r.Point, w.Mark, null, w.Diameter),
            Reading.Indirect { Way: IndirectWay.Bar w } r => ("indirect", r.Point, w.NearEnd, w.FarEnd, w.StandOff),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        var (dx, dy) = reading switch
        {
            Reading.Drop r => (r.Dx, r.Dy),
            Reading.Indirect { Way: IndirectWay.Offset w } => ((Length?)w.Dx, (Length?)w.Dy),
            _ => ((Length?)null, (Length?)null),
        };
        var way = (reading as Reading.Indirect)?.Way;
        return new Dictionary<string, string?>(StringComparer.Ordinal)
        {
            ["id"] = reading.Id,
            ["kind"] = kind,
            ["point"] = point,
            ["from"] = from,
            ["to"] = to,
            ["value"] = Length(value),
            ["dx"] = Length(dx),
            ["dy"] = Length(dy),
            ["above"] = reading is Reading.Height { IsAboveFloor: true } ? "floor" : null,
            ["way"] = way is null ? null : IndirectJson.WordFor(way),
            ["edge"] = way is IndirectWay.HoleEdge e ? IndirectJson.Edges.WordFor(e.Edge) : null,
            ["startAt"] = Length(reading.StartAt),
            ["unit"] = units == LengthUnit.Inch ? "in" : "mm",
            ["tool"] = reading.Tool,
            ["sigma"] = Length(reading.Sigma),
            ["note"] = reading.Note,
            ["withdrawn"] = reading.Withdrawn,
        };
    }
}
