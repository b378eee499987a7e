using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Doubts;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// How far the Floor finds each point of the frame off its drawing, all of them with their joint covariance: what two points share (the tape's scale, the frame's lie) must cancel in left against
/// right. Where the book says nothing the sides are compared with each other, half of each difference to each side, as in <see cref="DeviationFrom.Symmetry"/>.
/// </summary>
internal static class PlacesOfFloor
{
    /// <summary>The places; none when the readings cannot be put together yet.</summary>
    public static MeasuredPlaces Of(CarFile car)
    {
        // What the Floor does not believe must not turn the wheels either.
        var solution = FrameSolution.Of(car);
        if (FrameDoubts.Of(car, solution).Believed is not { } fit)
        {
            return MeasuredPlaces.None;
        }

        var evaluation = FrameEvaluation.Of(car, fit, solution.Readings);
        var (frame, found) = (evaluation.Frame, Deviations(evaluation));
        var coordinates = new List<MeasuredPlaces.Coordinate>();
        var weights = new List<double[]>();
        for (var p = 0; p < frame.Points.Count; p++)
        {
            for (var axis = 0; axis < 3; axis++)
            {
                var place = frame.Place(p, axis);
                if (place < 0)
                {
                    continue;
                }

                var deviation = found[p, axis];
                coordinates.Add(new(frame.Points[p].Id, axis, frame.Values[place], deviation?.ValueMetres));
                weights.Add(deviation?.Weights ?? Unit(frame.Values.Length, place));
            }
        }

        return MeasuredPlaces.Of(coordinates, Joint(weights, frame.Covariance));
    }

    private sealed record Found(double ValueMetres, double[] Weights);

    private static Found?[,] Deviations(FrameEvaluation evaluation)
    {
        var found = new Found?[evaluation.Frame.Points.Count, 3];
        for (var i = 0; i < evaluation.Frame.Pairs.Count; i++)
        {
            var (_, left, right) = evaluation.Frame.Pairs[i];
            foreach (var (kind, axis) in new[] { (ContrastKind.Stagger, 0), (ContrastKind.Middle, 1), (ContrastKind.Level, 2) })
            {
                if (evaluation.Contrasts.Sides(kind, i) is { } contrast && evaluation.Lie.Adjust(contrast) is { } adjusted)
                {
                    var (ofLeft, ofRight) = kind == ContrastKind.Middle ? (1.0, 1.0) : (0.5, -0.5);
                    found[left, axis] = Share(adjusted, ofLeft);
                    found[right, axis] = Share(adjusted, ofRight);
                }
            }
        }

        // A point that the book knows is held against the book alone.
        foreach (var contrast in evaluation.Contrasts.All.Where(c => c.IsBook).GroupBy(c => c.Subject))
        {
            var adjusted = contrast.Select(c => (c.Kind, Adjusted: evaluation.Lie.Adjust(c))).Where(c => c.Adjusted is not null).ToList();
            for (var axis = 0; axis < 3 && adjusted.Count > 0; axis++)
            {
                var own = adjusted.FirstOrDefault(c => c.Kind - ContrastKind.BookX == axis).Adjusted;
                found[contrast.Key, axis] = own is null ? null : Share(own, 1);
            }
        }

        return found;
    }

    private static Found Share(AdjustedContrast adjusted, double share) =>
        new(share * adjusted.ValueMetres, [.. adjusted.Weights.Select(w => share * w)]);

    private static double[] Unit(int count, int place)
    {
        var unit = new double[count];
        unit[place] = 1;
        return unit;
    }

    // W C W'
    private static double[,] Joint(List<double[]> weights, double[,] covariance)
    {
        var n = covariance.GetLength(0);
        var half = weights.Select(w => Times(w, covariance, n)).ToList();
        var joint = new double[weights.Count, weights.Count];
        for (var i = 0; i < weights.Count; i++)
        {
            for (var j = 0; j < weights.Count; j++)
            {
                for (var k = 0; k < n; k++)
                {
                    joint[i, j] += half[i][k] * weights[j][k];
                }
            }
        }

        return joint;
    }

    private static double[] Times(double[] weights, double[,] covariance, int n)
    {
        var product = new double[n];
        for (var k = 0; k < n; k++)
        {
            for (var j = 0; weights[k] != 0 && j < n; j++)
            {
                product[j] += weights[k] * covariance[k, j];
            }
        }

        return product;
    }
}
