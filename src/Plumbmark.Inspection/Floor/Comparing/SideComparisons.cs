using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Comparing;

/// <summary>Lengths read on both sides, held against each other as they were read: the first useful answer, long before a network closes.</summary>
/// <remarks>
/// The tape's scale and zero cancel; what is left is each reading's own error and the drop error of the four points:
/// u² = u1² / n1 + u2² / n2 + Σ σ_drop² / drops.
/// </remarks>
internal sealed class SideComparisons
{
    private readonly IReadOnlyList<FramePoint> _points;
    private readonly Dictionary<(string, string), (double Mean, double Variance)> _lengths = [];
    private readonly Dictionary<string, double> _dropVariance;
    private readonly LengthWords _words;
    private readonly List<SideComparison> _all = [];

    private SideComparisons(CarFile car, Network network, IReadOnlySet<string> doubted, LengthWords words)
    {
        (_points, _words) = (car.Frame.Points, words);
        var drops = network
            .Observations.Where(o => o is Observation.DropShift or Observation.DropDistance)
            .CountBy(o => o is Observation.DropShift s ? s.Point : ((Observation.DropDistance)o).Point, StringComparer.Ordinal)
            .ToDictionary(StringComparer.Ordinal);
        _dropVariance = network.Points.ToDictionary(
            p => p.Id,
            p => p.DropSigmaMetres * p.DropSigmaMetres / (1 + drops.GetValueOrDefault(p.Id)),
            StringComparer.Ordinal
        );
        foreach (
            var group in network
                .Observations.OfType<Observation.PlanDistance>()
                .Where(o => !doubted.Contains(o.Id))
                .GroupBy(o => Key(o.From, o.To))
        )
        {
            var weight = group.Sum(o => 1 / (o.SigmaMetres * o.SigmaMetres));
            _lengths[group.Key] = (group.Sum(o => o.ValueMetres / (o.SigmaMetres * o.SigmaMetres)) / weight, 1 / weight);
        }
    }

    /// <summary>All lengths that were read on both sides, sides before diagonals, in the order of the pairs.</summary>
    public static IReadOnlyList<SideComparison> Of(CarFile car, Network network, IReadOnlySet<string> doubted, LengthWords words)
    {
        var comparisons = new SideComparisons(car, network, doubted, words);
        var pairs = FramePairs.Of(car.Frame.Points).Where(p => comparisons.IsBuiltAlike(p)).ToList();
        for (var i = 0; i < pairs.Count; i++)
        {
            for (var j = i + 1; j < pairs.Count; j++)
            {
                comparisons.Add(pairs[i], pairs[j], isDiagonal: false);
                comparisons.Add(pairs[i], pairs[j], isDiagonal: true);
            }
        }

        return comparisons._all;
    }

    private static (string, string) Key(string a, string b) => string.CompareOrdinal(a, b) < 0 ? (a, b) : (b, a);

    /// <summary>A pair that was built unlike is not compared by eye; the fit knows by how much it differs.</summary>
    private bool IsBuiltAlike(FramePair pair)
    {
        var (left, right) = (_points[pair.Left], _points[pair.Right]);
        return left.Asymmetry is null
            && right.Asymmetry is null
            && !(left.Nominal?.X is { } a && right.Nominal?.X is { } b && a != b)
            && !(left.Nominal?.Y is { } c && right.Nominal?.Y is { } d && c != -d);
    }

    private void Add(FramePair a, FramePair b, bool isDiagonal)
    {
        var (aLeft, aRight) = (_points[a.Left].Id, _points[a.Right].Id);
        var (bLeft, bRight) = isDiagonal ? (_points[b.Right].Id, _points[b.Left].Id) : (_points[b.Left].Id, _points[b.Right].Id);
        if (!_lengths.TryGetValue(Key(aLeft, bLeft), out var left) || !_lengths.TryGetValue(Key(aRight, bRight), out var right))
        {
            return;
        }

        var variance = left.Variance + right.Variance + new[] { aLeft, aRight, bLeft, bRight }.Sum(p => _dropVariance[p]);
        var (difference, u) = (left.Mean - right.Mean, Math.Sqrt(variance));
        var sentence = ComparisonWords.Sentence(a.Name, b.Name, isDiagonal, difference, u, (aLeft, bLeft), _words);
        _all.Add(new SideComparison(aLeft, bLeft, aRight, bRight, difference, u, sentence));
    }
}
