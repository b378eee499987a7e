using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Round;

/// <summary>Puts what is to be measured into walking order: once round the frame for heights and drops, then from the front to the rear for lengths.</summary>
public static class MeasuringRound
{
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
