using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Round;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>How far the job has come on the usual round, and which end can be judged next.</summary>
/// <param name="Lengths">Lengths of the round taken.</param>
/// <param name="OfLengths">Lengths of the round.</param>
/// <param name="Heights">Heights of the round taken.</param>
/// <param name="OfHeights">Heights of the round.</param>
/// <param name="Words">The same in a sentence.</param>
public sealed record FloorProgress(int Lengths, int OfLengths, int Heights, int OfHeights, string Words)
{
    private const int FewestForThreeParts = 6; // pairs; with fewer there is a front and a rear only

    /// <summary>The progress of a car; null before a pair is drawn.</summary>
    public static FloorProgress? Of(CarFile car)
    {
        var all = MeasuringRound.Usual(car with { Readings = [] }).Where(l => l.Kind is RoundKind.Plan or RoundKind.Height).ToList();
        var left = MeasuringRound.Usual(car).Where(l => l.Kind is RoundKind.Plan or RoundKind.Height).ToList();
        var (ofLengths, ofHeights) = (Count(all, RoundKind.Plan), Count(all, RoundKind.Height));
        if (ofLengths == 0)
        {
            return null;
        }

        var (lengths, heights) = (ofLengths - Count(left, RoundKind.Plan), ofHeights - Count(left, RoundKind.Height));
        var so = Say("progress.so-far", lengths, ofLengths, heights, ofHeights);
        return new FloorProgress(lengths, ofLengths, heights, ofHeights, $"{so} {Then(car, left)}");
    }

    private static int Count(IEnumerable<RoundLine> lines, RoundKind kind) => lines.Count(l => l.Kind == kind);

    /// <summary>The end that needs fewest lines more; lines between two ends belong to neither.</summary>
    private static string Then(CarFile car, List<RoundLine> left)
    {
        if (left.Count == 0)
        {
            return Say("progress.round-done");
        }

        var parts = Parts(car)
            .Select(p => (p.Key, Left: left.Count(l => p.Points.Contains(l.From) && (l.To is null || p.Points.Contains(l.To)))))
            .ToList();
        return parts.Where(p => p.Left > 0).OrderBy(p => p.Left).Select(p => p.Key).FirstOrDefault() is not { } key ? Say("progress.across")
            : parts.First(p => p.Key == key).Left == 1 ? Say("progress.one-then", Say(key))
            : Say("progress.then", parts.First(p => p.Key == key).Left, Say(key));
    }

    private static IEnumerable<(string Key, HashSet<string> Points)> Parts(CarFile car)
    {
        var stations = car
            .Frame.Points.Where(p => p.Mirror is not null)
            .OrderByDescending(p => (p.Sketch?.X ?? p.Nominal?.X)?.Metres ?? 0)
            .GroupBy(p => string.CompareOrdinal(p.Id, p.Mirror) < 0 ? p.Id : p.Mirror!)
            .Select(g => g.Select(p => p.Id).ToList())
            .ToList();
        string[] keys =
            stations.Count < FewestForThreeParts
                ? ["progress.front", "progress.rear"]
                : ["progress.front", "progress.middle", "progress.rear"];
        for (var i = 0; i < keys.Length; i++)
        {
            var (from, to) = (i * stations.Count / keys.Length, (i + 1) * stations.Count / keys.Length);
            yield return (keys[i], stations[from..to].SelectMany(s => s).ToHashSet(StringComparer.Ordinal));
        }
    }
}
