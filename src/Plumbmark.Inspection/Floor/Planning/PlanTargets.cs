using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Hypotheses;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>What readings should settle, as sums of a design's coordinates with their present uncertainty.</summary>
internal static class PlanTargets
{
    /// <summary>The checks that must be true and the forms of damage that must not be able to hide.</summary>
    /// <param name="points">The frame's points.</param>
    /// <param name="limits">The limits to settle to.</param>
    /// <param name="design">What is known.</param>
    /// <param name="fit">Where the points are, as far as fitted.</param>
    /// <param name="known">The checks as the readings so far have them.</param>
    /// <param name="turnRadians">How the frame lies in the design.</param>
    public static IReadOnlyList<PlanTarget> Of(
        IReadOnlyList<FramePoint> points,
        Limits limits,
        NetworkDesign design,
        NetworkFit? fit,
        IReadOnlyList<Check> known,
        double turnRadians
    )
    {
        var frame = DesignFrame.Of(points, design, fit, turnRadians);
        var contrasts = Contrasts.Of(frame);
        var targets = new List<PlanTarget>();
        var values = known.ToDictionary(c => c.Id, c => c.ValueMetres, StringComparer.Ordinal);
        foreach (var (check, weights) in FrameChecks.Of(frame, contrasts, FrameLie.Of(frame, contrasts), limits, []))
        {
            if (check.MustBeTrue && check.LimitMetres is { } limit)
            {
                var isMeasured = values.ContainsKey(check.Id);
                var gradient = DesignFrame.Gradient(frame, design, weights);
                targets.Add(
                    new PlanTarget(check.Id, gradient, limit, values.GetValueOrDefault(check.Id), check.UMetres) { IsMeasured = isMeasured }
                );
            }
        }

        targets.AddRange(FormsThatHide(frame, contrasts, design, limits));
        return targets;
    }

    /// <summary>Each form at the place where it shows least.</summary>
    private static IEnumerable<PlanTarget> FormsThatHide(MeasuredFrame frame, Contrasts contrasts, NetworkDesign design, Limits limits)
    {
        if (contrasts.All.Count == 0)
        {
            yield break;
        }

        var comparison = new GaussianComparison(contrasts.Values(), contrasts.Covariance(), contrasts.Lies());
        var shapes = DamageShapes.Of(frame).Where(s => FrameBlindSpots.Forms.Contains(s.Form)).ToList();
        var columns = shapes.ConvertAll(s => contrasts.ChangesBy(s.Moves[0]));
        var uncertainties = columns.ConvertAll(c => comparison.UncertaintyAlone(c));
        foreach (var form in FrameBlindSpots.Forms)
        {
            var seen = Enumerable.Range(0, shapes.Count).Where(i => shapes[i].Form == form && double.IsFinite(uncertainties[i])).ToList();
            if (seen.Count == 0 || FrameBlindSpots.LimitOf(form, limits) is not { } limit)
            {
                continue;
            }

            var least = seen.MaxBy(i => uncertainties[i]);
            var weights = new double[frame.Values.Length];
            var ofValues = comparison.WeightsOf(columns[least])!;
            for (var r = 0; r < ofValues.Length; r++)
            {
                foreach (var term in contrasts.All[r].Terms)
                {
                    weights[term.Coordinate] += ofValues[r] * term.Factor;
                }
            }

            var gradient = DesignFrame.Gradient(frame, design, weights);
            yield return new PlanTarget(
                form.ToString().ToLowerInvariant(),
                gradient,
                limit,
                0,
                Math.Sqrt(Math.Max(0, design.Variance(gradient)))
            )
            {
                IsForm = true,
            };
        }
    }
}
