using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Changes;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>
/// Two measuring sessions held against each other: what was measured up to a moment, and what was measured anew after it. No reading counts in both, because what
/// was straightened in between makes the old ones say nothing about the frame as it is.
/// </summary>
public sealed record SessionsView
{
    // A pause this long parts two evenings in the garage.
    private static readonly TimeSpan s_pause = TimeSpan.FromHours(4);

    /// <summary>The car.</summary>
    public required OpenCar Car { get; init; }

    /// <summary>Where one may part before from after: the last entry before a pause, with its words.</summary>
    public required IReadOnlyList<(string Value, string Text)> Partings { get; init; }

    /// <summary>The parting chosen.</summary>
    public required string Parting { get; init; }

    /// <summary>What was measured before; null when there is nothing to part.</summary>
    public required FloorAnswer? Before { get; init; }

    /// <summary>What was measured after.</summary>
    public required FloorAnswer? After { get; init; }

    /// <summary>How many readings each side has.</summary>
    public required (int Before, int After) Readings { get; init; }

    /// <summary>Each value that both have.</summary>
    public required IReadOnlyList<Line> Changes { get; init; }

    /// <summary>Both frames over each other, as SVG; empty when a side has no place for a point.</summary>
    public required string Overlay { get; init; }

    /// <summary>A value before and after.</summary>
    public sealed record Line(
        string Name,
        string Before,
        string After,
        string Change,
        bool IsReal,
        Verdict? VerdictBefore,
        Verdict? VerdictAfter
    );

    /// <summary>The page for a request.</summary>
    public static SessionsView Of(CarRequest request)
    {
        var car = request.Car;
        var partings = PartingsOf(car);
        var chosen = partings.Any(p => p.Value == request.Query("after"))
            ? request.Query("after")
            : (partings.Count > 0 ? partings[^1].Value : "");
        if (!long.TryParse(chosen, out var sequence))
        {
            return new SessionsView
            {
                Car = car,
                Partings = partings,
                Parting = "",
                Before = null,
                After = null,
                Readings = (0, 0),
                Changes = [],
                Overlay = "",
            };
        }

        var early = Fold.Of(UpTo(car, sequence));
        var before = new HashSet<string>(early.Readings.Select(r => r.Id), StringComparer.Ordinal);
        // Points and limits as they are now for both, so that both are judged alike.
        var (first, second) = (
            car.File with
            {
                Readings = [.. early.Readings],
            },
            car.File with
            {
                Readings = [.. car.File.Readings.Where(r => !before.Contains(r.Id))],
            }
        );
        var options = FloorOptions.Default with { NextReadings = 0 };
        var (then, now) = (FloorInspection.Of(first, options), FloorInspection.Of(second, options));
        return new SessionsView
        {
            Car = car,
            Partings = partings,
            Parting = chosen,
            Before = then,
            After = now,
            Readings = (first.StandingReadings.Count(), second.StandingReadings.Count()),
            Changes = ChangesOf(car.File, then, now),
            Overlay = OverlayPicture.Svg(car.File, then, now),
        };
    }

    /// <summary>Entries up to a place in the journal; an undo of any of them is heeded, whenever it was made.</summary>
    private static IEnumerable<JournalEntry> UpTo(OpenCar car, long sequence)
    {
        var undone = Fold.UndoneIn([.. car.Entries.Select(e => e.Entry)]);
        return car
            .Entries.Where(e => e.Sequence <= sequence && !undone.Contains(e.Entry.Id) && e.Entry.Act is not Act.Undone)
            .Select(e => e.Entry);
    }

    private static IReadOnlyList<(string Value, string Text)> PartingsOf(OpenCar car)
    {
        var taken = car.Entries.Where(e => e.Entry.Act is Act.ReadingTaken).ToList();
        return
        [
            .. taken
                .Zip(taken.Skip(1))
                .Where(p => p.Second.Entry.At - p.First.Entry.At >= s_pause)
                .Select(p => ($"{p.First.Sequence}", Say("sessions.after", p.First.Entry.At.ToLocalTime().ToString("yyyy-MM-dd HH:mm")))),
            // Without a pause the middle of one long session can be named by its reading.
            .. taken.SkipLast(1).Select(e => ($"{e.Sequence}", Say("sessions.after-reading", ((Act.ReadingTaken)e.Entry.Act).Reading.Id))),
        ];
    }

    private static IReadOnlyList<Line> ChangesOf(CarFile car, FloorAnswer before, FloorAnswer after)
    {
        var display = ShownLengths.Of(car);
        return
        [
            .. FrameComparison
                .Of(before, after)
                .Select(c => new Line(
                    NameOf(c),
                    display.Text(c.BeforeMetres),
                    display.Text(c.AfterMetres),
                    $"{display.Text(c.ChangeMetres)} {display.PlusMinus(ShownLengths.Coverage * c.UMetres)}",
                    c.Finding == ChangeFinding.Real,
                    c.VerdictBefore,
                    c.VerdictAfter
                ))
                .OrderByDescending(l => l.IsReal),
        ];
    }

    private static string NameOf(FrameChange change)
    {
        var kind = change.Kind is "sideShift" or "stagger" or "width" or "heightDifference" ? Say($"sessions.{change.Kind}") : change.Kind;
        return change.Points.Count == 2
            ? $"{PairRow.NameOf(change.Points[0], change.Points[1])}: {kind}"
            : $"{Texts.List(change.Points.Take(3))} {kind}";
    }
}
