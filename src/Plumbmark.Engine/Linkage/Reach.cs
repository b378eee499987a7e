namespace Plumbmark.Engine.Linkage;

/// <summary>Whether a position could be reached, and if not, which part ran out and by how much. <c>default</c> is reached.</summary>
/// <param name="Limit">The part that ran out.</param>
/// <param name="ShortByMetres">How much longer (positive) the chain would have to be at the last position tried, metres; zero when reached.</param>
public readonly record struct Reach(ReachLimit Limit, double ShortByMetres)
{
    /// <summary>Whether the position exists.</summary>
    public bool IsReached => Limit == ReachLimit.None;
}
