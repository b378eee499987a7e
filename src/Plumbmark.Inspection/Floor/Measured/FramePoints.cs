using Plumbmark.Inspection.Floor.Comparing;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>The measured points as the answer lists them, each with how far it is from where it should be.</summary>
internal static class FramePoints
{
    public static IReadOnlyList<PointEstimate> Of(MeasuredFrame frame, Contrasts contrasts, FrameLie lie)
    {
        var deviations = new double?[frame.Points.Count, 3];
        var against = new DeviationFrom?[frame.Points.Count];
        AddSymmetry(frame, contrasts, lie, deviations, against);
        foreach (var contrast in contrasts.All.Where(c => c.IsBook))
        {
            if (lie.Adjust(contrast) is { } adjusted)
            {
                if (against[contrast.Subject] != DeviationFrom.Nominal)
                {
                    (deviations[contrast.Subject, 0], deviations[contrast.Subject, 1], deviations[contrast.Subject, 2]) = (
                        null,
                        null,
                        null
                    );
                    against[contrast.Subject] = DeviationFrom.Nominal;
                }

                deviations[contrast.Subject, contrast.Kind - ContrastKind.BookX] = adjusted.ValueMetres;
            }
        }

        return
        [
            .. Enumerable
                .Range(0, frame.Points.Count)
                .Where(p => frame.HasPlan(p) || frame.HasHeight(p))
                .Select(p =>
                    Estimate(
                        frame,
                        p,
                        against[p] is { } from ? new Deviation(deviations[p, 0], deviations[p, 1], deviations[p, 2], from) : null
                    )
                ),
        ];
    }

    private static PointEstimate Estimate(MeasuredFrame frame, int p, Deviation? deviation)
    {
        double? Value(int axis) => frame.Place(p, axis) is >= 0 and var i ? frame.Values[i] : null;
        double? U(int axis) => frame.Place(p, axis) is >= 0 and var i ? Math.Sqrt(frame.Covariance[i, i]) : null;
        double? xy = frame.HasPlan(p) ? frame.Covariance[frame.Place(p, 0), frame.Place(p, 1)] : null;
        return new PointEstimate(frame.Points[p].Id, Value(0), Value(1), Value(2), U(0), U(1), U(2), xy, deviation);
    }

    /// <summary>Half of a pair's difference to each side; a side shift is the same for both.</summary>
    private static void AddSymmetry(MeasuredFrame frame, Contrasts contrasts, FrameLie lie, double?[,] deviations, DeviationFrom?[] against)
    {
        for (var i = 0; i < frame.Pairs.Count; i++)
        {
            var (_, left, right) = frame.Pairs[i];
            foreach (var (kind, axis) in new[] { (ContrastKind.Stagger, 0), (ContrastKind.Middle, 1), (ContrastKind.Level, 2) })
            {
                if (contrasts.Sides(kind, i) is not { } contrast || lie.Adjust(contrast) is not { } adjusted)
                {
                    continue;
                }

                var value = adjusted.ValueMetres;
                (deviations[left, axis], deviations[right, axis]) = kind == ContrastKind.Middle ? (value, value) : (value / 2, -value / 2);
                against[left] = against[right] = DeviationFrom.Symmetry;
            }
        }
    }
}
