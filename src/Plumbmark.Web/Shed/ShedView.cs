using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Shed;

/// <summary>What the shed shows.</summary>
/// <param name="Cars">The cars that stand in it.</param>
/// <param name="Bin">The cars in the bin.</param>
/// <param name="Typed">What was typed into the form for a new car, when it is shown again.</param>
/// <param name="Faults">What was wrong in it.</param>
/// <param name="Refused">A car file that was refused; null when none was.</param>
public sealed record ShedView(
    IReadOnlyList<ShedView.Line> Cars,
    IReadOnlyList<ShedView.Line> Bin,
    PageRequest Typed,
    FieldFaults Faults,
    ShedView.RefusedFile? Refused
)
{
    private const int CarsOnAPage = 50;
    private const int MostInBin = 100;

    // A larger car takes seconds: its own page may, the list may not.
    private const int MostPointsInAList = 100;
    private const int MostReadingsInAList = 1000;

    // What another build said may be said otherwise by this one.
    private static readonly string s_toldBy = typeof(FloorInspection).Module.ModuleVersionId.ToString("N")[..12];

    /// <summary>A car in the list.</summary>
    public sealed record Line(long Id, string Name, string? Serial, string State, Verdict? Verdict);

    /// <summary>A file that is not a car, with everything that is wrong with it.</summary>
    public sealed record RefusedFile(string Name, IReadOnlyList<Fault> Faults);

    /// <summary>What is sought by name or serial number; empty for every car.</summary>
    public string Sought { get; private init; } = "";

    /// <summary>Which page of the list, from 1.</summary>
    public int PageNumber { get; private init; } = 1;

    /// <summary>Cars in the list, on all its pages.</summary>
    public int Total { get; private init; }

    /// <summary>Pages of the list; at least one.</summary>
    public int Pages => Math.Max(1, (Total + CarsOnAPage - 1) / CarsOnAPage);

    /// <summary>Whether the list is long enough to be searched.</summary>
    public bool IsLong => Total > CarsOnAPage || Sought.Length > 0;

    /// <summary>Another page of the same list.</summary>
    public string AddressOf(int page) => $"/?q={Uri.EscapeDataString(Sought)}&page={page}";

    /// <summary>The shed for a request, with what was wrong in a form when something was.</summary>
    public static ShedView Of(PageRequest request, FieldFaults? faults = null, RefusedFile? refused = null)
    {
        var sought = request.Query("q");
        var page = int.TryParse(request.Query("page"), out var p) && p is > 0 and < 1_000_000 ? p : 1;
        var (cars, total) = request.Journals.Glances(sought, (page - 1) * CarsOnAPage, CarsOnAPage, toldBy: s_toldBy);
        var (binned, _) = request.Journals.Glances("", 0, MostInBin, binned: true, s_toldBy);
        var budget = new Budget();
        return new ShedView(
            [.. cars.Select(c => LineOf(c, request, budget))],
            [.. binned.Select(c => LineOf(c, request, budget))],
            request,
            faults ?? new FieldFaults(),
            refused
        )
        {
            Sought = sought,
            PageNumber = page,
            Total = total,
        };
    }

    private static Line LineOf(CarGlance car, PageRequest request, Budget budget)
    {
        var state = (car.Readings, car.Points) switch
        {
            (0, 0) => Say("shed.nothing-drawn-yet"),
            (0, _) => Say("shed.no-reading-yet", Texts.Count("count.point", car.Points)),
            _ => $"{Texts.Count("count.point", car.Points)}, {Texts.Count("count.reading", car.Readings)}",
        };
        var name = string.IsNullOrWhiteSpace(car.Name) ? Say("shed.car-n", car.Id) : car.Name;
        return new Line(car.Id, name, car.Serial, state, car.Readings == 0 ? null : VerdictOf(car, request, budget));
    }

    /// <summary>
    /// The verdict as it was last worked out for this state of the car; otherwise it is worked out now, as long as the page is not kept waiting. What is left open
    /// is worked out when the page is shown again, or when the car is opened.
    /// </summary>
    private static Verdict? VerdictOf(CarGlance car, PageRequest request, Budget budget)
    {
        if (car.Verdict is { } known)
        {
            return Enum.TryParse<Verdict>(known, out var told) ? told : null;
        }

        if (car.Points > MostPointsInAList || car.Readings > MostReadingsInAList || budget.IsSpent)
        {
            return null;
        }

        try
        {
            if (request.Journals.Car(car.Id) is not { } open)
            {
                return null;
            }

            var verdict = request.Answers().For(open).Overall.Verdict;
            request.Journals.RememberVerdict(car.Id, open.Sequence, $"{verdict}", s_toldBy);
            return verdict;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return null; // one car must not hide the others; its own page says what is the matter with it
        }
    }

    /// <summary>How long a list may spend on verdicts that nobody has asked for yet. A few are worked out in any case: a small shed shows them all.</summary>
    private sealed class Budget
    {
        private const int Always = 4;
        private static readonly TimeSpan s_most = TimeSpan.FromMilliseconds(20);
        private readonly long _began = System.Diagnostics.Stopwatch.GetTimestamp();
        private int _asked;

        public bool IsSpent => ++_asked > Always && System.Diagnostics.Stopwatch.GetElapsedTime(_began) > s_most;
    }
}
