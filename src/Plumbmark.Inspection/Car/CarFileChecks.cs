using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car;

/// <summary>What must hold between the parts of a car file: names that are used exist, partners agree, a start graduation leaves a length.</summary>
internal static class CarFileChecks
{
    // Three times the largest frame and ten times the longest job known; what a file of many more asks to be worked out would take minutes on every page.
    private const int MostPoints = 200;
    private const int MostReadings = 4000;

    // Every field in which a reading names a point; the checks of the fields themselves are the readers' business.
    private static readonly string[] s_pointFields = ["point", "from", "to"];

    /// <summary>Not more than can be worked out while somebody waits.</summary>
    public static void Amounts(IReadOnlyList<JsonPart> points, IReadOnlyList<JsonPart> readings, Faults faults)
    {
        Amount(points, MostPoints, "car.file-checks.more-points", faults);
        Amount(readings, MostReadings, "car.file-checks.more-readings", faults);
    }

    private static void Amount(IReadOnlyList<JsonPart> items, int most, string sentence, Faults faults)
    {
        if (items.Count > most)
        {
            faults.Add(items[most], Texts.Say(sentence, items.Count, most));
        }
    }

    /// <summary>Partners must be there and name each other.</summary>
    /// <param name="points">The points that could be read.</param>
    /// <param name="named">The names of all points, of those too that could not be read.</param>
    /// <param name="faults">Where faults go.</param>
    public static void Points(IReadOnlyList<Located<FramePoint>> points, IReadOnlySet<string> named, Faults faults)
    {
        var byId = points.DistinctBy(p => p.Value.Id).ToDictionary(p => p.Value.Id, StringComparer.Ordinal);
        foreach (var (point, part) in points)
        {
            if (point.IsFixed && point.Sketch is null)
            {
                faults.Add(part, Texts.Say("car.file-checks.point-is-fixed-but-has", point.Id));
            }

            if (point.Mirror is not { } mirror)
            {
                continue;
            }

            if (mirror == point.Id)
            {
                faults.Add(part, Texts.Say("car.file-checks.point-is-its-own-mirror", point.Id));
            }
            else if (!named.Contains(mirror))
            {
                faults.Add(part, Texts.Say("car.file-checks.the-mirror-is-not-among", mirror, Known(named)));
            }
            else if (byId.GetValueOrDefault(mirror)?.Value.Mirror is { } back && back != point.Id)
            {
                faults.Add(part, Texts.Say("car.file-checks.point-mirrors-but-mirrors-partners", point.Id, mirror, back));
            }
        }
    }

    /// <summary>A reading goes to points that exist; looked at in the text itself, so that a faulty value beside it does not hide it.</summary>
    public static void ReadingPoints(IReadOnlyList<JsonPart> readings, IReadOnlySet<string> named, Faults faults)
    {
        foreach (var part in readings)
        {
            foreach (var missing in s_pointFields.Select(part.TextOf).OfType<string>().Where(p => !named.Contains(p)).Distinct())
            {
                faults.Add(part, Texts.Say("car.file-checks.reading-goes-to-which-is", part.TextOf("id"), missing, Known(named)));
            }
        }
    }

    /// <summary>A start graduation leaves a length.</summary>
    public static void Readings(IReadOnlyList<Located<Reading>> readings, Faults faults)
    {
        foreach (var (reading, part) in readings)
        {
            if (reading.StartAt is { } start && ValueOf(reading) is { } value && start >= value)
            {
                faults.Add(part, Texts.Say("car.file-checks.reading-starts-at-and-shows", reading.Id, start.AsTyped, value.AsTyped));
            }
        }
    }

    private static Engine.Lengths.Length? ValueOf(Reading reading) =>
        reading switch
        {
            Reading.Plan r => r.Value,
            Reading.Direct r => r.Value,
            _ => null,
        };

    private static string Known(IReadOnlySet<string> ids) =>
        ids.Count switch
        {
            0 => Texts.Say("car.file-checks.no-point-is-defined-yet"),
            <= 24 => Texts.Say("car.file-checks.known-are", string.Join(", ", ids)),
            _ => Texts.Say("car.file-checks.points-are-known-from-to", ids.Count, ids.First(), ids.Last()),
        };
}
