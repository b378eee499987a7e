using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Contradictions;

/// <summary>A length that no figure can have beside others: it is longer than the way round by them.</summary>
/// <param name="Long">The length.</param>
/// <param name="Around">The lengths that lead from its one end to the other, in order.</param>
/// <param name="ExcessMetres">By how much it is longer than those together.</param>
internal sealed record Contradiction(Observation.PlanDistance Long, IReadOnlyList<Observation.PlanDistance> Around, double ExcessMetres)
{
    /// <summary>All lengths that take part; one of them at least is wrong.</summary>
    public IEnumerable<Observation.PlanDistance> All => [Long, .. Around];
}
