using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>Completes the rear suspension of the model.</summary>
internal static class RearOfModel
{
    /// <summary>The rear ready to compute with; null when something is missing, which is then in the remarks.</summary>
    public static RearAxle? Of(RearDrawing? drawing, PickUpPlaces places, RoadDeviations deviations, RoadRemarks remarks)
    {
        if (drawing is null)
        {
            remarks.Miss("The rear suspension is not drawn yet: wheelbase, thrust line and set-back to the rear wait for it.");
            return null;
        }

        return drawing.Match(axle => LiveOf(axle, places, deviations, remarks), arms => TrailingOf(arms, places, deviations));
    }

    private static RearAxle? LiveOf(RearDrawing.LiveAxle drawing, PickUpPlaces places, RoadDeviations deviations, RoadRemarks remarks)
    {
        var left = places.Drawn(drawing.Eye, Side.Left, "the rear spring's fixed eye");
        var right = places.Drawn(drawing.Eye, Side.Right, "the rear spring's fixed eye");
        TakeMeasured(drawing.Eye, 0, deviations);
        if (drawing.EyeToAxle is null)
        {
            remarks.Miss("How far the axle lies behind the springs' fixed eyes is not told.");
        }

        if (drawing.Track is null)
        {
            remarks.Miss("The rear track is not told.");
        }

        return left is { } l && right is { } r && drawing.EyeToAxle is { } back && drawing.Track is { } track
            ? new RearAxle.Live(l, r, back.Metres, drawing.AxleAboveEye?.Metres ?? 0, track.Metres)
            : null;
    }

    private static RearAxle? TrailingOf(RearDrawing.TrailingArms drawing, PickUpPlaces places, RoadDeviations deviations)
    {
        var ends = new[] { Side.Left, Side.Right }
            .Select(side =>
                (
                    Inner: places.Drawn(drawing.Inner, side, "the rear arm's inner pivot"),
                    Outer: places.Drawn(drawing.Outer, side, "the rear arm's outer pivot")
                )
            )
            .ToArray();
        var wheel = places.OfPlace(drawing.WheelCentre, "the rear wheel centre");
        TakeMeasured(drawing.Inner, 0, deviations);
        TakeMeasured(drawing.Outer, 1, deviations);
        if (wheel is not { } centre || ends.Any(e => e.Inner is null || e.Outer is null))
        {
            return null;
        }

        var (left, right) = (ends[0], ends[1]);
        return new RearAxle.Trailing(
            (left.Inner!.Value, left.Outer!.Value),
            (right.Inner!.Value, right.Outer!.Value),
            centre,
            CornerPoints.SpinAxisOf(drawing.Camber?.Radians ?? 0, drawing.ToeIn?.Radians ?? 0)
        );
    }

    private static void TakeMeasured(PickUp? pickUp, int place, RoadDeviations deviations)
    {
        if (pickUp is PickUp.AtPair pair)
        {
            foreach (var side in new[] { Side.Left, Side.Right })
            {
                deviations.TakePoint(pair.PointOn(side), side, RoadParameters.RearStart(side) + (3 * place));
            }
        }
    }
}
