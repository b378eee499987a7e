using Plumbmark.Engine.Bending;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Press;

/// <summary>Where a press job stands and what comes next.</summary>
public abstract record PressState
{
    private PressState() { }

    /// <summary>The part is not straightened.</summary>
    /// <param name="Refusals">Why, and what to do instead.</param>
    public sealed record Refused(IReadOnlyList<Refusal> Refusals) : PressState;

    /// <summary>Questions are open.</summary>
    /// <param name="Questions">They.</param>
    public sealed record Asking(IReadOnlyList<GateQuestion> Questions) : PressState;

    /// <summary>Something must be measured first.</summary>
    /// <param name="Missing">What.</param>
    public sealed record NeedsMore(IReadOnlyList<string> Missing) : PressState;

    /// <summary>The next bite.</summary>
    /// <param name="Travel">How far.</param>
    /// <param name="MeasureFirst">Whether the part is within the limit as read, but not surely: measure again before pressing.</param>
    public sealed record NextBite(NextTravel Travel, bool MeasureFirst) : PressState;

    /// <summary>Stopped until the part has been inspected and a crack test is entered.</summary>
    /// <param name="Reasons">Why.</param>
    /// <param name="AfterBite">The bite after which it must be tested.</param>
    public sealed record Stopped(IReadOnlyList<StopReason> Reasons, string AfterBite) : PressState;

    /// <summary>Over for good: no further bite is planned.</summary>
    /// <param name="Reasons">Why.</param>
    public sealed record Over(IReadOnlyList<StopReason> Reasons) : PressState;

    /// <summary>Within the limit. No word on whether the part is sound.</summary>
    /// <param name="Verdict">True where a limit is known and kept with 95 %; null where no limit is known and no bend can be read any more.</param>
    /// <param name="IsTested">Whether a crack test after the last bite found nothing; until then the job is not finished.</param>
    public sealed record Straight(Verdict? Verdict, bool IsTested) : PressState;

    /// <summary>One answer for each case.</summary>
    public T Match<T>(
        Func<Refused, T> refused,
        Func<Asking, T> asking,
        Func<NeedsMore, T> needsMore,
        Func<NextBite, T> next,
        Func<Stopped, T> stopped,
        Func<Over, T> over,
        Func<Straight, T> straight
    ) =>
        this switch
        {
            Refused s => refused(s),
            Asking s => asking(s),
            NeedsMore s => needsMore(s),
            NextBite s => next(s),
            Stopped s => stopped(s),
            Over s => over(s),
            Straight s => straight(s),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
