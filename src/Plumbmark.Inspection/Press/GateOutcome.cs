namespace Plumbmark.Inspection.Press;

/// <summary>Whether the press plans for a part: refused, still asking, or open.</summary>
public abstract record GateOutcome
{
    private GateOutcome() { }

    /// <summary>The part is not straightened. Whatever else is unanswered does not matter any more.</summary>
    /// <param name="Refusals">Every reason, the kind of part first.</param>
    public sealed record Refused(IReadOnlyList<Refusal> Refusals) : GateOutcome;

    /// <summary>Nothing speaks against it yet, and not everything is answered.</summary>
    /// <param name="Questions">What must still be answered.</param>
    public sealed record Asking(IReadOnlyList<GateQuestion> Questions) : GateOutcome;

    /// <summary>The press plans. That is no word on whether the part is sound.</summary>
    public sealed record Open : GateOutcome;

    /// <summary>One answer for each case.</summary>
    public T Match<T>(Func<IReadOnlyList<Refusal>, T> refused, Func<IReadOnlyList<GateQuestion>, T> asking, Func<T> open) =>
        this switch
        {
            Refused r => refused(r.Refusals),
            Asking a => asking(a.Questions),
            Open => open(),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
