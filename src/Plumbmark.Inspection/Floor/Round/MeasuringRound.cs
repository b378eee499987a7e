using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Inspection.Floor.Round;

/// <summary>Puts what is to be measured into walking order: once round the frame for heights and drops, then from the front to the rear for lengths.</summary>
public static class MeasuringRound
{
    // A plan weighs every pair of points: beyond this it takes minutes, and a printed form must not.
    private const int MostPointsPlanned = 40;

    /// <summary>A planned set of readings in walking order; one that is planned twice is asked for twice.</summary>
    /// <remarks>Heights and drops go down the left side and up the right; lengths go from front to rear, and at the same place from left to right.</remarks>
    public static IReadOnlyList<RoundLine> Of(CarFile car, IEnumerable<NextReading> planned) =>
        InOrder(car, planned.Select(Line).OfType<RoundLine>());

    /// <summary>
    /// The usual readings of a frame that are not in the file yet: widths, sides and both diagonals of each bay, both long diagonals, every height, and one more
    /// drop of each suspension, spring and steering point.
    /// </summary>
    /// <remarks>Common practice, no source. It is a round to begin with; which readings are worth most is the business of the next best reading.</remarks>
    public static IReadOnlyList<RoundLine> Usual(CarFile car)
    {
        var taken = car.StandingReadings.Select(KeyOf).ToHashSet(StringComparer.Ordinal);
        return InOrder(car, UsualLines(car).DistinctBy(KeyOf).Where(l => !taken.Contains(KeyOf(l))));
    }

    /// <summary>The round of that scope, in walking order. A frame too large to plan in the time a page may take gets the usual readings instead.</summary>
    public static IReadOnlyList<RoundLine> Of(CarFile car, RoundScope scope) =>
        scope switch
        {
            RoundScope.Usual => Usual(car),
            RoundScope.Planned => Planned(car),
            RoundScope.All => InOrder(car, UsualLines(car).DistinctBy(KeyOf)),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>
    /// The standing readings that were taken since the car stood as <paramref name="before"/>, by the line of the round that each answers. A line that is
    /// there twice is answered by two readings.
    /// </summary>
    /// <param name="round">The lines of a round of <paramref name="before"/>.</param>
    /// <param name="before">The car as it stood when the round was made.</param>
    /// <param name="now">The car as it stands.</param>
    public static IReadOnlyDictionary<int, Reading> Answered(IReadOnlyList<RoundLine> round, CarFile before, CarFile now)
    {
        var old = before.Readings.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        var taken = now.StandingReadings.Where(r => !old.Contains(r.Id)).ToLookup(KeyOf, StringComparer.Ordinal);
        return round
            .GroupBy(KeyOf, StringComparer.Ordinal)
            .SelectMany(lines => lines.Zip(taken[lines.Key], (line, reading) => (line.Number, reading)))
            .ToDictionary(a => a.Number, a => a.reading);
    }

    private static IReadOnlyList<RoundLine> Planned(CarFile car)
    {
        var doubted = FloorInspection.Of(car).Suspects.Select(s => s.Reading).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var again = car.StandingReadings.Where(r => doubted.Contains(r.Id)).Select(Line).OfType<RoundLine>().ToList();
        var keys = again.Select(KeyOf).ToHashSet(StringComparer.Ordinal);
        var worthMost =
            car.Frame.Points.Count <= MostPointsPlanned ? FloorPlanner.For(car).Readings.Select(Line).OfType<RoundLine>() : Usual(car);
        return InOrder(car, again.Concat(worthMost.Where(l => !keys.Contains(KeyOf(l)))));
    }

    private static RoundLine? Line(Reading reading) =>
        reading switch
        {
            Reading.Plan r => Plan(r.From, r.To),
            Reading.Direct r => new RoundLine(0, RoundKind.Direct, r.From, r.To),
            Reading.Rise r => new RoundLine(0, RoundKind.Rise, r.From, r.To),
            Reading.Height { IsAboveFloor: false } r => new RoundLine(0, RoundKind.Height, r.Point, null),
            Reading.Drop r => new RoundLine(0, RoundKind.Drop, r.Point, null),
            _ => null,
        };

    private static RoundLine? Line(NextReading next) =>
        next switch
        {
            { Kind: "height", Point: { } point } => new RoundLine(0, RoundKind.Height, point, null),
            { Kind: "drop", Point: { } point } => new RoundLine(0, RoundKind.Drop, point, null),
            { Kind: "rise", From: { } from, To: { } to } => new RoundLine(0, RoundKind.Rise, from, to),
            { Kind: "direct", From: { } from, To: { } to } => new RoundLine(0, RoundKind.Direct, from, to),
            { From: { } from, To: { } to } => new RoundLine(0, RoundKind.Plan, from, to),
            { Point: { } point } => new RoundLine(0, RoundKind.Drop, point, null),
            _ => null,
        };

    private static IEnumerable<RoundLine> UsualLines(CarFile car)
    {
        foreach (var point in car.Frame.Points)
        {
            yield return new RoundLine(0, RoundKind.Height, point.Id, null);
            if (point.Role is PointRole.Suspension or PointRole.Spring or PointRole.Steering)
            {
                yield return new RoundLine(0, RoundKind.Drop, point.Id, null);
            }
        }

        var stations = Stations(car);
        for (var i = 0; i < stations.Count; i++)
        {
            var (left, right) = stations[i];
            yield return Plan(left, right);
            if (i + 1 < stations.Count)
            {
                var (nextLeft, nextRight) = stations[i + 1];
                yield return Plan(left, nextLeft);
                yield return Plan(right, nextRight);
                yield return Plan(left, nextRight);
                yield return Plan(right, nextLeft);
            }
        }

        if (stations.Count > 2)
        {
            yield return Plan(stations[0].Left, stations[^1].Right);
            yield return Plan(stations[0].Right, stations[^1].Left);
        }
    }

    private static RoundLine Plan(string from, string to) => new(0, RoundKind.Plan, from, to);

    /// <summary>The pairs from the front to the rear; without sketches, in the order of the list.</summary>
    private static List<(string Left, string Right)> Stations(CarFile car)
    {
        var walk = new Walk(car);
        var pairs = new List<(string Left, string Right)>();
        var used = new HashSet<string>(StringComparer.Ordinal);
        foreach (var point in car.Frame.Points.Where(p => p.Mirror is not null))
        {
            if (used.Add(point.Id) && used.Add(point.Mirror!))
            {
                pairs.Add(walk.IsLeft(point.Id) ? (point.Id, point.Mirror!) : (point.Mirror!, point.Id));
            }
        }

        return [.. pairs.OrderBy(p => walk.FromFront(p.Left))];
    }

    private static IReadOnlyList<RoundLine> InOrder(CarFile car, IEnumerable<RoundLine> lines)
    {
        var walk = new Walk(car);
        var ordered = lines.OrderBy(l => l.Kind).ThenBy(l => l.To is null ? walk.AroundFrom(l.From) : walk.FrontOf(l)).ThenBy(walk.RearOf);
        return [.. ordered.Select((l, i) => l with { Number = i + 1 })];
    }

    private static string KeyOf(RoundLine line) => line.To is { } to ? KeyOf(line.Kind, line.From, to) : $"{line.Kind} {line.From}";

    private static string KeyOf(Reading reading) =>
        reading switch
        {
            Reading.Plan r => KeyOf(RoundKind.Plan, r.From, r.To),
            Reading.Direct r => KeyOf(RoundKind.Direct, r.From, r.To),
            Reading.Rise r => KeyOf(RoundKind.Rise, r.From, r.To),
            Reading.Height r => $"{RoundKind.Height} {r.Point}",
            Reading.Drop r => $"{RoundKind.Drop} {r.Point}",
            _ => reading.Id,
        };

    private static string KeyOf(RoundKind kind, string from, string to) =>
        string.CompareOrdinal(from, to) < 0 ? $"{kind} {from} {to}" : $"{kind} {to} {from}";
}
