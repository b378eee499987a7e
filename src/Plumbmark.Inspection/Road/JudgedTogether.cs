using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>Judges all figures and all results of the wheel check together, so that a figure never says another word than the headline above it.</summary>
/// <remarks>
/// Out only after allowing for how many there are (Holm, Scandinavian Journal of Statistics 6 (1979) 65-70): of seventeen true figures one alone would look out in every second car. One that is out
/// by itself but not among all of them is open, and <see cref="LooksOut"/> lets a sentence say so.
/// </remarks>
internal static class JudgedTogether
{
    /// <summary>The same figures and results with the verdicts that stand when all are judged together.</summary>
    public static (IReadOnlyList<RoadFigure> Figures, IReadOnlyList<WheelResult> Wheels) Of(
        IReadOnlyList<RoadFigure> figures,
        IReadOnlyList<WheelResult> wheels
    )
    {
        double[] within = [.. figures.Select(f => f.ProbabilityWithin).Concat(wheels.Select(w => w.ProbabilityWithin)).OfType<double>()];
        var together = new Queue<double>(HolmStepDown.Adjusted(within));
        Verdict? Next(double? own) => own is { } p ? Judge(p, together.Dequeue()) : null;
        return (
            [.. figures.Select(f => f with { Verdict = Next(f.ProbabilityWithin) })],
            [.. wheels.Select(w => w with { Verdict = Next(w.ProbabilityWithin) })]
        );
    }

    /// <summary>Whether something that is open would be out if it were judged by itself.</summary>
    public static bool LooksOut(double? probabilityWithin, Verdict? verdict) =>
        verdict == Verdict.CannotTellYet && probabilityWithin is { } p && RoadFigures.VerdictOf(p) == Verdict.Out;

    private static Verdict Judge(double own, double together) =>
        RoadFigures.VerdictOf(own) == Verdict.True ? Verdict.True
        : RoadFigures.VerdictOf(together) == Verdict.Out ? Verdict.Out
        : Verdict.CannotTellYet;
}
