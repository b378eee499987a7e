namespace Plumbmark.Inspection.Road;

/// <summary>
/// Readings of one angle of a wheel, some after rolling it half a turn: the mean of the two positions' means is free of the rim's run-out, which is half their difference.
/// </summary>
/// <param name="Value">The angle, radians.</param>
/// <param name="U">Its standard uncertainty.</param>
/// <param name="RunOut">The rim's share, half the difference of the two positions, radians; null when it was read in one position only.</param>
/// <param name="Readings">The readings used.</param>
internal sealed record HalfTurns(double Value, double U, double? RunOut, IReadOnlyList<string> Readings)
{
    /// <summary>One reading as an angle.</summary>
    /// <param name="Id">The reading.</param>
    /// <param name="HalfTurn">Whether half a turn on.</param>
    /// <param name="Value">The angle, radians.</param>
    /// <param name="U">Its standard uncertainty without run-out.</param>
    /// <param name="SpanMetres">Over which length of the rim.</param>
    public sealed record One(string Id, bool HalfTurn, double Value, double U, double SpanMetres);

    /// <summary>Brings them together; null without readings.</summary>
    public static HalfTurns? Of(IReadOnlyList<One> readings)
    {
        if (readings.Count == 0)
        {
            return null;
        }

        var ids = readings.Select(r => r.Id).ToList();
        var (first, second) = (readings.Where(r => !r.HalfTurn).ToList(), readings.Where(r => r.HalfTurn).ToList());
        if (first.Count > 0 && second.Count > 0)
        {
            var ((a, ua), (b, ub)) = (Mean(first), Mean(second));
            return new(0.5 * (a + b), 0.5 * Math.Sqrt((ua * ua) + (ub * ub)), 0.5 * Math.Abs(a - b), ids);
        }

        // The rim's own share stays in, unknown: it is allowed for.
        var (mean, u) = Mean(readings);
        var runOut = WheelCheckNumbers.RunOutMetres / readings.Min(r => r.SpanMetres);
        return new(mean, Math.Sqrt((u * u) + (runOut * runOut)), null, ids);
    }

    private static (double Value, double U) Mean(IReadOnlyList<One> readings) =>
        (readings.Average(r => r.Value), Math.Sqrt(readings.Sum(r => r.U * r.U)) / readings.Count);
}
