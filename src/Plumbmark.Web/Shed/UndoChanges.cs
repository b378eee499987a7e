using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Shed;

/// <summary>Takes back what was done, as a new entry: nothing leaves the journal, and an undo can be undone.</summary>
internal static class UndoChanges
{
    public static IResult Undo(CarRequest request)
    {
        if (!long.TryParse(request.Field("together"), out var together) || !CanBeUndone(request.Car, together))
        {
            return Show.Sorry(Say("shed.undo.nothing-to-undo"), Say("shed.undo.what-was-to-be"), StatusCodes.Status422UnprocessableEntity);
        }

        var isUndo = request.Car.Entries.Any(e => e.Together == together && e.Entry.Act is Act.Undone);
        var next = Back(request);
        return request
            .Journals.Append(request.Car.Id, request.FormName(), by: null, car => ActsToUndo(car, together))
            .Match(
                _ => Show.Redirect(next, isUndo ? Notice.PutBack : Notice.Undone),
                _ => Show.Redirect(next, Notice.Undone),
                Show.Refused,
                () => Show.NotFound(Say("shed.undo.there-is-no-such"))
            );
    }

    /// <summary>The last thing that may be undone: sent together, not undone yet, and not the car's own beginning. Null when there is none.</summary>
    public static KeptEntry? Last(OpenCar car)
    {
        var undone = Fold.UndoneIn([.. car.Entries.Select(e => e.Entry)]);
        return car.Entries.LastOrDefault(e => e.Together > 1 && e.Entry.Act is not Act.Undone && !undone.Contains(e.Entry.Id));
    }

    /// <summary>The undo that may be put back: only when nothing was done since. Null when there is none.</summary>
    public static KeptEntry? LastUndo(OpenCar car) =>
        car.Entries.Count > 0
        && car.Entries[^1] is { Entry.Act: Act.Undone undo } last
        && car.Entries.First(e => e.Entry.Id == undo.Entry).Entry.Act is not Act.Undone
            ? last
            : null;

    private static bool CanBeUndone(OpenCar car, long together) => together > 1 && car.Entries.Any(e => e.Together == together);

    private static IReadOnlyList<Act> ActsToUndo(OpenCar car, long together)
    {
        var undone = Fold.UndoneIn([.. car.Entries.Select(e => e.Entry)]);
        return [.. car.Entries.Where(e => e.Together == together && !undone.Contains(e.Entry.Id)).Select(e => new Act.Undone(e.Entry.Id))];
    }

    /// <summary>The page to go back to: one of this car's, so that the form cannot send anyone elsewhere.</summary>
    private static string Back(CarRequest request) =>
        request.Field("back") switch
        {
            "journal" => request.Address("journal"),
            "points" => request.Address("points"),
            "bench" => request.Address("bench"),
            _ when request.Car.File.Parts.Part(request.Field("back")) is { } part => Bench.PartChanges.Address(request, part.Id),
            _ => request.Address("floor"),
        };
}
