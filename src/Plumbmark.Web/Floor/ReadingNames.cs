using Plumbmark.Inspection.Journal;
using Plumbmark.Store;

namespace Plumbmark.Web.Floor;

/// <summary>Names for new readings: r1, r2, r3, as a person would number them in a notebook.</summary>
internal static class ReadingNames
{
    /// <summary>The next name, one past the highest that was ever given, undone readings included: an undo can itself be undone.</summary>
    public static string Next(OpenCar car) => From(car).First();

    /// <summary>The next names, as many as are taken.</summary>
    public static IEnumerable<string> From(OpenCar car)
    {
        var highest = car
            .Entries.Select(e => e.Entry.Act)
            .OfType<Act.ReadingTaken>()
            .Select(a => a.Reading.Id)
            .Where(id => id.StartsWith('r'))
            .Select(id => long.TryParse(id.AsSpan(1), out var n) && n < int.MaxValue ? n : 0)
            .DefaultIfEmpty(0)
            .Max();
        while (true)
        {
            yield return $"r{++highest}";
        }
    }
}
