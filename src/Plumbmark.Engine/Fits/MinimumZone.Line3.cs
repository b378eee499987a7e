using Plumbmark.Engine.Fits.Kernels;

namespace Plumbmark.Engine.Fits;

public static partial class MinimumZone
{
    // The line is turned until a turn promises no more than this share of the points' size.
    private const double PromiseTolerance = 1e-11;
    private const double LastPromise = 1e-8;
    private const int MostTurns = 30;

    /// <summary>The narrowest straight tube that holds at least two points of space: the straightness of a rod or an edge.</summary>
    /// <remarks>
    /// Square to the present direction the largest distance is a convex function of the line's two shifts and two slopes. It is minimised by cutting
    /// planes (Kelley, J. SIAM 8 (1960) 703-712): each cut says that one point lies no farther out than t in one direction. Then the direction is turned, and so on until it rests.
    /// </remarks>
    /// <param name="points">Metres.</param>
    public static FitOutcome<MinimumZoneFit<Line3>> Line3(ReadOnlySpan<Vector3> points)
    {
        var cloud = Cloud3.Make<MinimumZoneFit<Line3>>(points, 2, mayBeCollinear: true, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var line = new Line3(default, cloud.Directions[0]);
        for (var turn = 0; turn < MostTurns; turn++)
        {
            var tube = TubeSearch.Narrow(cloud.Points, line);
            if (tube is null)
            {
                break;
            }

            line = tube.Line;
            if (tube.Promised <= (turn + 1 < MostTurns ? PromiseTolerance : LastPromise))
            {
                var radius = cloud.Points.Max(line.Distance);
                var placed = new Line3(cloud.Centre + (cloud.Size * line.Point), line.Direction);
                return new FitOutcome<MinimumZoneFit<Line3>>.Fitted(
                    new(placed, 2 * cloud.Size * radius, [.. tube.Touching], tube.Sensitivity)
                );
            }
        }

        return new FitOutcome<MinimumZoneFit<Line3>>.NotSettled(MostTurns);
    }
}
