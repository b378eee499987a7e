using Plumbmark.Engine.Bending;

namespace Plumbmark.Inspection.Press;

/// <summary>Everything there is to say about a press job now.</summary>
/// <param name="Job">The job.</param>
/// <param name="Gate">Whether the press plans for the part.</param>
/// <param name="Findings">Where it is bent.</param>
/// <param name="Plan">The plan; null while something is missing.</param>
/// <param name="Log">The bites; null without a plan, or when the part is refused.</param>
/// <param name="State">Where the job stands.</param>
public sealed record PressReport(PressJob Job, GateOutcome Gate, PressFindings Findings, PressPlan? Plan, PressLog? Log, PressState State)
{
    /// <summary>The report of a job.</summary>
    public static PressReport Of(PressJob job)
    {
        var gate = Press.Gate.Examine(job);
        var planned = PressPlan.Of(job);
        var findings = planned.Match(n => n.Findings, r => r.Plan.Findings, p => p.Findings);
        var stopped = gate.Match<PressState?>(r => new PressState.Refused(r), q => new PressState.Asking(q), () => null);
        if (stopped is not null)
        {
            return new(job, gate, findings, null, null, stopped);
        }

        return planned.Match(
            more => new PressReport(job, gate, findings, null, null, new PressState.NeedsMore(more.Missing)),
            refused => new PressReport(job, gate, findings, refused.Plan, null, new PressState.Refused(refused.Refusals)),
            plan =>
            {
                var log = PressLog.Of(job, plan);
                return new PressReport(job, gate, findings, plan, log, log.State());
            }
        );
    }
}
