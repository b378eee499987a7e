using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>The pieces into which the lengths of a frame fall: points in different pieces have no length between them, however roundabout.</summary>
public static class PlanPieces
{
    /// <summary>The pieces, largest first; points that no length touches are in none. Points of known place hold together as they are.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Of(CarFile car)
    {
        var parent = car.Frame.Points.ToDictionary(p => p.Id, p => p.Id, StringComparer.Ordinal);
        string Root(string id) => parent[id] == id ? id : parent[id] = Root(parent[id]);
        void Join(string a, string b) => parent[Root(a)] = Root(b);

        var touched = new HashSet<string>(StringComparer.Ordinal);
        foreach (var reading in Lengths(car))
        {
            var points = reading.Points.ToList();
            touched.UnionWith(points);
            points.ForEach(p => Join(points[0], p));
        }

        var known = car.Frame.Points.Where(p => p.IsFixed).Select(p => p.Id).ToList();
        known.ForEach(p => Join(known[0], p));
        return
        [
            .. car
                .Frame.Points.Where(p => touched.Contains(p.Id))
                .GroupBy(p => Root(p.Id), StringComparer.Ordinal)
                .Select(g => (IReadOnlyList<string>)[.. g.Select(p => p.Id)])
                .OrderByDescending(g => g.Count),
        ];
    }

    /// <summary>A fault for each piece that nothing ties to the largest, at its first reading in the file; none when all hold together.</summary>
    /// <param name="car">The car.</param>
    /// <param name="utf8">The file it was read from, for the places.</param>
    public static IReadOnlyList<Fault> Faults(CarFile car, ReadOnlySpan<byte> utf8)
    {
        var pieces = Of(car);
        var faults = new Faults();
        if (pieces.Count < 2)
        {
            return [];
        }

        var parts = JsonText.Read(utf8, new Faults())?.Members.FirstOrDefault(m => m.Name == "readings").Value?.Items ?? [];
        foreach (var piece in pieces.Skip(1))
        {
            var first = car
                .Readings.ToList()
                .FindIndex(r => r.Withdrawn is null && Lengths(car).Contains(r) && r.Points.Any(piece.Contains));
            var sentence = PlanPieceWords.Apart(
                piece,
                pieces[0],
                [.. Lengths(car).Where(r => r.Points.Any(piece.Contains)).Select(r => r.Id)]
            );
            if (first < parts.Count)
            {
                faults.Add(parts[first], sentence);
            }
            else
            {
                faults.Add(new Fault($"readings[{first}]", 0, 0, sentence));
            }
        }

        return faults.InOrder();
    }

    private static IEnumerable<Reading> Lengths(CarFile car) =>
        car.StandingReadings.Where(r => r is Reading.Plan or Reading.Direct or Reading.Offset);
}
