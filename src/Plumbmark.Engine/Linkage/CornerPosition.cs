namespace Plumbmark.Engine.Linkage;

/// <summary>What comes of asking a corner to stand at a height with the steering held: it stands, or a part does not reach.</summary>
public abstract record CornerPosition
{
    private CornerPosition() { }

    /// <summary>Answers with the one case that applies.</summary>
    public TAnswer Match<TAnswer>(Func<CornerState, TAnswer> stands, Func<Reach, TAnswer> outOfReach)
    {
        ArgumentNullException.ThrowIfNull(stands);
        ArgumentNullException.ThrowIfNull(outOfReach);
        return this switch
        {
            Stands s => stands(s.State),
            OutOfReach o => outOfReach(o.Reach),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>The corner stands so.</summary>
    /// <param name="State">Where everything is.</param>
    public sealed record Stands(CornerState State) : CornerPosition;

    /// <summary>No such position exists.</summary>
    /// <param name="Reach">Which part runs out.</param>
    public sealed record OutOfReach(Reach Reach) : CornerPosition;
}
