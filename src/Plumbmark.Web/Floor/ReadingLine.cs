using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>A reading in the list.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Words">What it says, as typed.</param>
/// <param name="Note">What was noted; null when nothing.</param>
/// <param name="Withdrawn">Why it was taken back; null while it stands.</param>
/// <param name="Doubt">Why it is doubted; null when it is not.</param>
/// <param name="AgainAddress">Where the same is measured again.</param>
public sealed record ReadingLine(string Id, string Words, string? Note, string? Withdrawn, string? Doubt, string AgainAddress)
{
    /// <summary>The readings of a car, newest first.</summary>
    public static IReadOnlyList<ReadingLine> Of(CarFile car, long id, FloorAnswer answer) =>
        [.. car.Readings.Select(r => LineOf(r, id, answer)).Reverse()];

    /// <summary>Where the same as an earlier reading is measured again; the floor itself when there is no such reading.</summary>
    public static string AgainAddressOf(Reading? reading, long car)
    {
        if (reading is null)
        {
            return $"/cars/{car}/floor";
        }

        var (kind, point, from, to) = reading switch
        {
            Reading.Plan r => ("plan", "", r.From, r.To),
            Reading.Direct r => ("direct", "", r.From, r.To),
            Reading.Rise r => ("rise", "", r.From, r.To),
            Reading.Height r => ("height", r.Point, "", ""),
            Reading.Offset r => ("offset", r.Point, r.From, r.To),
            Reading.Drop r => ("drop", r.Point, "", ""),
            _ => ("plan", "", "", ""),
        };
        var form = new EntryForm(EntryKind.Of(kind), point, from, to, "", reading.Tool ?? "", "", "", "", "", new FieldFaults());
        return $"{form.Address(car)}#value";
    }

    private static ReadingLine LineOf(Reading reading, long car, FloorAnswer answer) =>
        new(
            reading.Id,
            ActWords.For(reading),
            reading.Note,
            reading.Withdrawn,
            answer.Suspects.FirstOrDefault(s => s.Reading == reading.Id)?.Sentence,
            AgainAddressOf(reading, car)
        );
}
