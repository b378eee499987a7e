using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>Completes the rear suspension of the model.</summary>
internal static class RearOfModel
{
    /// <summary>The rear ready to compute with; null when something is missing, which is then in the remarks.</summary>
    public static RearAxle? Of(RearDrawing? drawing, PickUpPlaces places, RoadDeviations deviations, RoadRemarks remarks)
    {
        if (drawing is null)
        {
            remarks.Miss(Texts.Say("road.rear-of-model.the-rear-suspension-is-not"));
            return null;
        }

        return drawing.Match(axle => LiveOf(axle, places, deviations, remarks), arms => TrailingOf(arms, places, deviations));
    }

    private static RearAxle? LiveOf(RearDrawing.LiveAxle drawing, PickUpPlaces places, RoadDeviations deviations, RoadRemarks remarks)
    {
        var left = places.Drawn(drawing.Eye, Side.Left, Texts.Say("road.rear-of-model.the-rear-springs-fixed-eye"));
        var right = places.Drawn(drawing.Eye, Side.Right, Texts.Say("road.rear-of-model.the-rear-springs-fixed-eye"));
        TakeMeasured(drawing.Eye, 0, deviations);
        if (drawing.EyeToAxle is null)
        {
            remarks.Miss(Texts.Say("road.rear-of-model.how-far-the-axle-lies"));
        }

        if (drawing.Track is null)
        {
            remarks.Miss(Texts.Say("road.rear-of-model.the-rear-track-is-not"));
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
                    Inner: places.Drawn(drawing.Inner, side, Texts.Say("road.rear-of-model.the-rear-arms-inner-pivot")),
                    Outer: places.Drawn(drawing.Outer, side, Texts.Say("road.rear-of-model.the-rear-arms-outer-pivot"))
                )
            )
            .ToArray();
        var wheel = places.OfPlace(drawing.WheelCentre, Texts.Say("road.rear-of-model.the-rear-wheel-centre"));
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
