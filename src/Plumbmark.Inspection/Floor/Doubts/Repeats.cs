using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;

namespace Plumbmark.Inspection.Floor.Doubts;

/// <summary>Readings taken again after a doubt, which settle it.</summary>
internal static class Repeats
{
    // A repeat within three of its standard deviations agrees (own choice: a doubt needs more than that, and a slip is far beyond it).
    private const double Agrees = 3;

    /// <summary>
    /// For each doubted reading one that measures the same and agrees with the fit of the others; empty when one of them has none, or a point is
    /// doubted.
    /// </summary>
    /// <param name="network">All readings.</param>
    /// <param name="believed">The fit without what is doubted.</param>
    /// <param name="doubted">What is doubted.</param>
    public static IReadOnlyList<string> ThatAgree(Network network, NetworkFit believed, Explanation doubted)
    {
        var observations = network.Observations.ToDictionary(o => o.Id, StringComparer.Ordinal);
        var agreeing = believed
            .Readings.Where(r => r.Standardised is { } w && Math.Abs(w) < Agrees)
            .Select(r => observations.GetValueOrDefault(r.Id))
            .OfType<Observation>()
            .ToList();
        var repeats = doubted
            .Doubted.Select(d =>
                d.ReadingId is { } id && observations.TryGetValue(id, out var wrong) ? agreeing.Find(o => IsSame(o, wrong))?.Id : null
            )
            .ToList();
        return repeats.Contains(null) ? [] : [.. repeats.OfType<string>()];
    }

    private static bool IsSame(Observation one, Observation other) =>
        (one, other) switch
        {
            (Observation.PlanDistance a, Observation.PlanDistance b) => AreSame((a.From, a.To), (b.From, b.To)),
            (Observation.DirectDistance a, Observation.DirectDistance b) => AreSame((a.From, a.To), (b.From, b.To)),
            (Observation.Height a, Observation.Height b) => a.Point == b.Point,
            (Observation.Offset a, Observation.Offset b) => (a.Point, a.From, a.To) == (b.Point, b.From, b.To),
            _ => false,
        };

    private static bool AreSame((string From, string To) a, (string From, string To) b) => a == b || a == (b.To, b.From);
}
