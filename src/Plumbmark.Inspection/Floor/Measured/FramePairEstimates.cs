namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>The pairs as the answer lists them.</summary>
internal static class FramePairEstimates
{
    public static IReadOnlyList<PairEstimate> Of(MeasuredFrame frame, IReadOnlyList<Check> checks)
    {
        var byId = checks.ToDictionary(c => c.Id, StringComparer.Ordinal);
        return
        [
            .. frame.Pairs.Where(p => Has(frame, p, frame.HasPlan) || Has(frame, p, frame.HasHeight)).Select(p => Estimate(frame, p, byId)),
        ];
    }

    private static bool Has(MeasuredFrame frame, FramePair pair, Func<int, bool> what) => what(pair.Left) && what(pair.Right);

    private static PairEstimate Estimate(MeasuredFrame frame, FramePair pair, Dictionary<string, Check> checks)
    {
        var shift = checks.GetValueOrDefault($"side-shift:{pair.Name}");
        var stagger = checks.GetValueOrDefault($"stagger:{pair.Name}");
        var levelled = checks.GetValueOrDefault($"height-difference:{pair.Name}");
        var (width, uWidth) = Has(frame, pair, frame.HasPlan) ? Width(frame, pair) : (null, null);
        var (rise, uRise) = Has(frame, pair, frame.HasHeight) ? Rise(frame, pair) : (null, null);
        return new PairEstimate(
            frame.Points[pair.Left].Id,
            frame.Points[pair.Right].Id,
            shift?.ValueMetres,
            stagger?.ValueMetres,
            width,
            rise,
            shift?.UMetres,
            stagger?.UMetres,
            uWidth,
            uRise
        )
        {
            LevelledHeightDifferenceMetres = levelled?.ValueMetres,
            ULevelledHeightDifferenceMetres = levelled?.UMetres,
        };
    }

    private static (double?, double?) Width(MeasuredFrame frame, FramePair pair)
    {
        var (dx, dy) = (frame.X(pair.Left) - frame.X(pair.Right), frame.Y(pair.Left) - frame.Y(pair.Right));
        var width = double.Hypot(dx, dy);
        Term[] terms =
        [
            new(frame.Place(pair.Left, 0), dx / width),
            new(frame.Place(pair.Right, 0), -dx / width),
            new(frame.Place(pair.Left, 1), dy / width),
            new(frame.Place(pair.Right, 1), -dy / width),
        ];
        return (width, Math.Sqrt(Math.Max(0, frame.Variance(terms))));
    }

    private static (double?, double?) Rise(MeasuredFrame frame, FramePair pair)
    {
        Term[] terms = [new(frame.Place(pair.Left, 2), 1), new(frame.Place(pair.Right, 2), -1)];
        return (frame.Z(pair.Left) - frame.Z(pair.Right), Math.Sqrt(Math.Max(0, frame.Variance(terms))));
    }
}
