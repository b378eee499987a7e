using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Car;

/// <summary>What must hold between the parts of a car file: names that are used exist, partners agree, a start graduation leaves a length.</summary>
internal static class CarFileChecks
{
    public static void Points(IReadOnlyList<Located<FramePoint>> points, Faults faults)
    {
        var byId = points.DistinctBy(p => p.Value.Id).ToDictionary(p => p.Value.Id, StringComparer.Ordinal);
        foreach (var (point, part) in points)
        {
            if (point.IsFixed && point.Sketch is null)
            {
                faults.Add(part, $"Point \"{point.Id}\" is fixed but has no sketch; a fixed point needs its place in sketch.");
            }

            if (point.Mirror is not { } mirror)
            {
                continue;
            }

            if (mirror == point.Id)
            {
                faults.Add(part, $"Point \"{point.Id}\" is its own mirror; leave mirror out for a point on the centre line.");
            }
            else if (!byId.TryGetValue(mirror, out var partner))
            {
                faults.Add(part, $"The mirror \"{mirror}\" is not among the points; {Known(byId.Keys)}.");
            }
            else if (partner.Value.Mirror is { } back && back != point.Id)
            {
                faults.Add(
                    part,
                    $"Point \"{point.Id}\" mirrors \"{mirror}\", but \"{mirror}\" mirrors \"{back}\"; partners must name each other."
                );
            }
        }
    }

    public static void Readings(
        IReadOnlyList<Located<Reading>> readings,
        IReadOnlyList<Located<FramePoint>> points,
        IReadOnlyList<Located<Tool>> tools,
        Faults faults
    )
    {
        var ids = points.Select(p => p.Value.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var (reading, part) in readings)
        {
            foreach (var missing in reading.Points.Where(p => !ids.Contains(p)).Distinct())
            {
                faults.Add(part, $"Reading \"{reading.Id}\" goes to \"{missing}\", which is not among the points; {Known(ids)}.");
            }

            if (reading.StartAt is { } start && ValueOf(reading) is { } value && start >= value)
            {
                faults.Add(
                    part,
                    $"Reading \"{reading.Id}\" starts at {start.AsTyped} and shows {value.AsTyped}; the start must be less than what the tape shows."
                );
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

    private static string Known(IReadOnlyCollection<string> ids) =>
        ids.Count switch
        {
            0 => "no point is defined yet",
            <= 24 => $"known are {string.Join(", ", ids)}",
            _ => $"{ids.Count} points are known, from {ids.First()} to {ids.Last()}",
        };
}
