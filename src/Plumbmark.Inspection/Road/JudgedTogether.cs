using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>Judges all figures and all results of the wheel check together, so that a figure never says another word than the headline above it.</summary>
/// <remarks>
/// Out only after allowing for how many there are (Holm, Scandinavian Journal of Statistics 6 (1979) 65-70): of seventeen true figures one alone would look out in every second car. One that is out
/// by itself but not among all of them is open, and <see cref="LooksOut(RoadFigure)"/> lets a sentence say so.
/// </remarks>
internal static class JudgedTogether
{
    /// <summary>The same figures and results with the verdicts that stand when all are judged together.</summary>
    public static (IReadOnlyList<RoadFigure> Figures, IReadOnlyList<WheelResult> Wheels) Of(
        IReadOnlyList<RoadFigure> figures,
        IReadOnlyList<WheelResult> wheels
    )
    {
        double[] beyond = [.. figures.Select(NotBeyond).Concat(wheels.Select(NotBeyond)).OfType<double>()];
        var together = new Queue<double>(HolmStepDown.Adjusted(beyond));
        Verdict? Next(double? within) => within is { } p ? RoadFigures.VerdictOf(p, together.Dequeue()) : null;
        return (
            [.. figures.Select(f => f with { Verdict = Next(f.ProbabilityWithin) })],
            [.. wheels.Select(w => w with { Verdict = Next(w.ProbabilityWithin) })]
        );
    }

    /// <summary>Whether a figure that is open would be out if it were judged by itself.</summary>
    public static bool LooksOut(RoadFigure figure) => LooksOut(figure.Verdict, NotBeyond(figure));

    /// <summary>The same of a result of the wheel check.</summary>
    public static bool LooksOut(WheelResult result) => LooksOut(result.Verdict, NotBeyond(result));

    private static bool LooksOut(Verdict? verdict, double? notBeyond) =>
        verdict == Verdict.CannotTellYet && notBeyond is { } p && RoadFigures.VerdictOf(p) == Verdict.Out;

    private static double? NotBeyond(RoadFigure f) =>
        f.ProbabilityWithin is null ? null : RoadFigures.NotBeyond(f.Book?.LeastSi, f.Book?.MostSi, f.Mean, f.U);

    private static double? NotBeyond(WheelResult w) => RoadFigures.NotBeyond(w.Book?.LeastSi, w.Book?.MostSi, w.Value, w.U);
}
