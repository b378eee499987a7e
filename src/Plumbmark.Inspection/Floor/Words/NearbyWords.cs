using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Verdicts;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>Whether a bent point matters on the road: what it carries, and how far the nearest mount is that does.</summary>
internal static class NearbyWords
{
    /// <summary>A sentence for a bent point or pair; null for a form that concerns the whole frame, or where no point is said to carry anything.</summary>
    public static string? Of(FrameEvaluation evaluation, DamagePart part, LengthWords words)
    {
        var frame = evaluation.Frame;
        if (part.Form != DamageForm.Point || !frame.Points.Any(Roles.Matters))
        {
            return null;
        }

        var pair = frame.Pairs.FirstOrDefault(p => p.Left == part.Subject || p.Right == part.Subject);
        int[] bent = pair is null ? [part.Subject] : [pair.Left, pair.Right];
        if (bent.Any(p => Roles.Matters(frame.Points[p])))
        {
            return Texts.Say("floor.nearby.it-carries-suspension-spring-or");
        }

        var mounts = Enumerable
            .Range(0, frame.Points.Count)
            .Where(p => Roles.Matters(frame.Points[p]) && frame.HasPlan(p) && frame.HasPlan(part.Subject))
            .Select(p => (Point: p, Away: double.Hypot(frame.X(p) - frame.X(part.Subject), frame.Y(p) - frame.Y(part.Subject))))
            .ToList();
        if (mounts.Count == 0 || IsElsewhereToo(evaluation, bent))
        {
            return null;
        }

        var (nearest, away) = mounts.MinBy(m => m.Away);
        return Texts.Say("floor.nearby.it-is-local-no-other", frame.Points[nearest].Id, words.Size(away));
    }

    private static bool IsElsewhereToo(FrameEvaluation evaluation, int[] bent)
    {
        var names = bent.Select(p => evaluation.Frame.Points[p].Id).ToHashSet(StringComparer.Ordinal);
        return evaluation.Checks.Any(c => c.Check.Verdict == Verdict.Out && !c.Check.Points.Any(names.Contains));
    }
}
