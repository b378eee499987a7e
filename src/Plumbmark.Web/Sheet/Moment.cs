using System.Globalization;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Layout;

namespace Plumbmark.Web.Sheet;

/// <summary>A day on which something was entered, and how the car stood at its end.</summary>
/// <param name="Sequence">The last entry of that day.</param>
/// <param name="Words">The day, and how many readings there were.</param>
public sealed record Moment(long Sequence, string Words)
{
    /// <summary>The days of a journal, the latest first. The journal's order counts, not the clock's.</summary>
    public static IReadOnlyList<Moment> Of(OpenCar car) =>
        [
            .. car
                .Entries.GroupBy(e => e.Entry.At.ToLocalTime().Date)
                .Select(day => (Day: day.Key, Last: day.Max(e => e.Sequence)))
                .OrderByDescending(d => d.Last)
                .Take(60)
                .Select(d => new Moment(d.Last, Describe(d.Day, At(car, d.Last)))),
        ];

    /// <summary>The car as it stood after an entry.</summary>
    public static CarFile At(OpenCar car, long sequence) => Fold.Of(car.Entries.Where(e => e.Sequence <= sequence).Select(e => e.Entry));

    private static string Describe(DateTime day, CarFile car) =>
        $"{day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}, {Texts.Count("count.reading", car.StandingReadings.Count())}";
}
