using Plumbmark.Inspection.Journal;
using Plumbmark.Store;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Shed;

/// <summary>A page of a car's journal, newest first; what was sent together is one line.</summary>
/// <param name="Car">The car.</param>
/// <param name="Lines">The lines of this page.</param>
/// <param name="Older">Where the next page begins; null on the last.</param>
public sealed record JournalView(OpenCar Car, IReadOnlyList<JournalView.Line> Lines, long? Older)
{
    private const int LinesOnAPage = 50;

    /// <summary>What was sent together.</summary>
    /// <param name="Together">Its name for an undo.</param>
    /// <param name="At">When, as the machine's clock showed it.</param>
    /// <param name="Words">What was done.</param>
    /// <param name="IsUndone">Whether it has been undone.</param>
    /// <param name="CanUndo">Whether it may be undone.</param>
    public sealed record Line(long Together, string At, string Words, bool IsUndone, bool CanUndo);

    /// <summary>The page that a request asks for.</summary>
    public static JournalView Of(CarRequest request)
    {
        var car = request.Car;
        var undone = Fold.UndoneIn([.. car.Entries.Select(e => e.Entry)]);
        var before = long.TryParse(request.Query("before"), out var b) ? b : long.MaxValue;
        var groups = car
            .Entries.Where(e => e.Together < before)
            .GroupBy(e => e.Together)
            .OrderByDescending(g => g.Key)
            .Take(LinesOnAPage + 1)
            .ToList();
        var lines = groups.Take(LinesOnAPage).Select(g => LineOf(car, [.. g], undone)).ToList();
        return new JournalView(car, lines, groups.Count > LinesOnAPage ? lines[^1].Together : null);
    }

    private static Line LineOf(OpenCar car, IReadOnlyList<KeptEntry> group, IReadOnlySet<Guid> undone)
    {
        var isUndone = group.All(e => undone.Contains(e.Entry.Id));
        var at = group[0].Entry.At.ToLocalTime().ToString("yyyy-MM-dd HH:mm") + (group[0].Entry.By is { } by ? $", {by}" : "");
        return new Line(group[0].Together, at, WordsFor(car, group), isUndone, group[0].Together > 1 && !isUndone);
    }

    private static string WordsFor(OpenCar car, IReadOnlyList<KeptEntry> group)
    {
        var first = group[0].Entry.Act is Act.Undone undo ? UndoWords(car, undo, group.Count) : ActWords.For(group[0].Entry.Act);
        return group.Count == 1 || group[0].Entry.Act is Act.Undone ? first : Say("shed.journal.and-more-with-it", first, group.Count - 1);
    }

    private static string UndoWords(OpenCar car, Act.Undone undo, int count)
    {
        var target = car.Entries.FirstOrDefault(e => e.Entry.Id == undo.Entry)?.Entry.Act;
        var more = count == 1 ? "" : Say("shed.journal.and-more-with-it-2", count - 1);
        return target switch
        {
            null => Say("shed.journal.an-undo-of-something"),
            Act.Undone => Say("shed.journal.put-back-what-was", more),
            _ => Say("shed.journal.undone", ActWords.For(target), more),
        };
    }
}
