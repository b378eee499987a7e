namespace Plumbmark.Inspection.Press;

/// <summary>What came of planning: more must be measured, the measurements speak against it, or here is the plan.</summary>
public abstract record PlanOutcome
{
    private PlanOutcome() { }

    /// <summary>Something is missing.</summary>
    /// <param name="Findings">What can be said already.</param>
    /// <param name="Missing">What is missing, a sentence each.</param>
    public sealed record NeedsMore(PressFindings Findings, IReadOnlyList<string> Missing) : PlanOutcome;

    /// <summary>The measurements speak against pressing.</summary>
    /// <param name="Plan">The numbers behind the refusal.</param>
    /// <param name="Refusals">Every reason.</param>
    public sealed record Refused(PressPlan Plan, IReadOnlyList<Refusal> Refusals) : PlanOutcome;

    /// <summary>The plan.</summary>
    /// <param name="Plan">It.</param>
    public sealed record Ready(PressPlan Plan) : PlanOutcome;

    /// <summary>One answer for each case.</summary>
    public T Match<T>(Func<NeedsMore, T> needsMore, Func<Refused, T> refused, Func<PressPlan, T> ready) =>
        this switch
        {
            NeedsMore n => needsMore(n),
            Refused r => refused(r),
            Ready r => ready(r.Plan),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
