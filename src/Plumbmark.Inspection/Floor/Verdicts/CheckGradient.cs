using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>What a check is a sum of, told in the coordinates of the fit instead of the frame's own axes.</summary>
internal static class CheckGradient
{
    /// <summary>In the order of <see cref="NetworkCovariance.Coordinates"/>.</summary>
    /// <param name="frame">The frame, turned into its own axes since it was fitted.</param>
    /// <param name="fit">The fit it was taken from.</param>
    /// <param name="weights">The value as a weighted sum of the frame's coordinates.</param>
    public static double[] Of(MeasuredFrame frame, NetworkFit fit, double[] weights)
    {
        var gradient = new double[fit.Covariance.Count];
        var (sin, cos) = Math.SinCos(frame.TurnRadians);
        for (var p = 0; p < frame.Points.Count; p++)
        {
            double Weight(int axis) => frame.Place(p, axis) is >= 0 and var at ? weights[at] : 0;
            void Put(Axis axis, double weight)
            {
                if (fit.Covariance.IndexOf(frame.Points[p].Id, axis) is { } index)
                {
                    gradient[index] = weight;
                }
            }

            var (wx, wy) = (Weight(0), Weight(1));
            Put(Axis.X, (wx * cos) + (wy * sin));
            Put(Axis.Y, (-wx * sin) + (wy * cos));
            Put(Axis.Z, Weight(2));
        }

        return gradient;
    }
}
