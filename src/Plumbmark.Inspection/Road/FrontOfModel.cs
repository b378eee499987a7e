using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>The front suspension of the model: both corners and the gear as drawn, complete.</summary>
/// <param name="Corners">The corners, own-side axes.</param>
/// <param name="Gear">The steering gear, car axes.</param>
internal sealed record FrontOfModel((CornerPoints Left, CornerPoints Right) Corners, SteeringGear Gear)
{
    private static readonly (CornerPart Part, string What)[] s_pickUps =
    [
        (CornerPart.UpperFront, Texts.Say("road.front-of-model.the-upper-arms-front-pivot")),
        (CornerPart.UpperRear, Texts.Say("road.front-of-model.the-upper-arms-rear-pivot")),
        (CornerPart.LowerFront, Texts.Say("road.front-of-model.the-lower-arms-front-pivot")),
        (CornerPart.LowerRear, Texts.Say("road.front-of-model.the-lower-arms-rear-pivot")),
        (CornerPart.TrackRodInner, Texts.Say("road.front-of-model.the-track-rods-inner-joint")),
    ];

    /// <summary>Completes a drawing; null when something is missing, which is then in the remarks. What the Floor found of its pick-ups goes into the deviations.</summary>
    public static FrontOfModel? Of(FrontDrawing drawing, PickUpPlaces places, RoadDeviations deviations, RoadRemarks remarks)
    {
        var left = Corner(drawing, places, Side.Left);
        var right = Corner(drawing, places, Side.Right);
        AssumeAngles(drawing, remarks);
        foreach (var (part, _) in s_pickUps)
        {
            TakeMeasured(drawing, part, deviations);
        }

        if (left is null || right is null || GearOf(drawing, places, left, right, remarks) is not { } gear)
        {
            return null;
        }

        foreach (var (corner, side) in new[] { (left, "left"), (right, "right") })
        {
            if (!Linkage(corner))
            {
                remarks.Miss(Texts.Say("road.front-of-model.the-front-corner-as-drawn", side));
                return null;
            }
        }

        return new((left, right), gear);
    }

    private static bool Linkage(CornerPoints corner) =>
        Engine.Linkage.Corner.Of(corner).Solve(corner.WheelCentre.Z, corner.TrackRodInner, out _).IsReached;

    private static CornerPoints? Corner(FrontDrawing drawing, PickUpPlaces places, Side side)
    {
        var pickUps = s_pickUps.Select(p => places.Drawn(PickUpOf(drawing, p.Part), side, p.What)).ToArray();
        var upper = places.OfPlace(drawing.UpperJoint, Texts.Say("road.front-of-model.the-upper-outer-joint"));
        var lower = places.OfPlace(drawing.LowerJoint, Texts.Say("road.front-of-model.the-lower-outer-joint"));
        var lever = places.OfPlace(drawing.LeverJoint, Texts.Say("road.front-of-model.the-steering-levers-joint"));
        var wheel = places.OfPlace(drawing.WheelCentre, Texts.Say("road.front-of-model.the-front-wheel-centre"));
        if (pickUps.Any(p => p is null) || upper is null || lower is null || lever is null || wheel is null)
        {
            return null;
        }

        return new()
        {
            UpperFront = pickUps[0]!.Value,
            UpperRear = pickUps[1]!.Value,
            LowerFront = pickUps[2]!.Value,
            LowerRear = pickUps[3]!.Value,
            TrackRodInner = pickUps[4]!.Value,
            UpperJoint = upper.Value,
            LowerJoint = lower.Value,
            TrackRodOuter = lever.Value,
            WheelCentre = wheel.Value,
            SpinAxis = CornerPoints.SpinAxisOf(drawing.Camber?.Radians ?? 0, drawing.ToeIn?.Radians ?? 0),
            LowerEnd = new(drawing.TrunnionOffset?.Metres ?? 0, drawing.TrunnionLead?.Metres ?? 0),
            UpperMake = drawing.UpperArm,
            LowerMake = drawing.LowerArm,
        };
    }

    private static SteeringGear? GearOf(
        FrontDrawing drawing,
        PickUpPlaces places,
        CornerPoints left,
        CornerPoints right,
        RoadRemarks remarks
    )
    {
        var (leftInner, rightInner) = (left.TrackRodInner, right.TrackRodInner.Mirrored);
        if (drawing.SteeringBox is not { } box)
        {
            return SteeringGear.Rack.Between(leftInner, rightInner);
        }

        var dropShaft = places.OfPlace(box.DropArmShaft, Texts.Say("road.front-of-model.the-drop-arms-shaft"));
        var dropJoint = places.OfPlace(box.DropArmJoint, Texts.Say("road.front-of-model.the-drop-arms-joint"));
        var idlerShaft = places.OfPlace(box.IdlerShaft, Texts.Say("road.front-of-model.the-idlers-shaft"));
        var idlerJoint = places.OfPlace(box.IdlerJoint, Texts.Say("road.front-of-model.the-idlers-joint"));
        if (dropShaft is null || dropJoint is null || idlerShaft is null || idlerJoint is null)
        {
            return null;
        }

        remarks.Assume(Texts.Say("road.front-of-model.the-steering-boxs-and-the"));
        var isDropLeft = dropJoint.Value.Y >= idlerJoint.Value.Y;
        return new SteeringGear.Box
        {
            DropArm = new(dropShaft.Value, Vector3.Up, dropJoint.Value),
            Idler = new(idlerShaft.Value, Vector3.Up, idlerJoint.Value),
            LeftInner = leftInner,
            RightInner = rightInner,
            LeftCarrier = CarrierOf(box, isDropLeft),
            RightCarrier = CarrierOf(box, !isDropLeft),
        };
    }

    private static SteeringCarrier CarrierOf(SteeringBoxDrawing box, bool isOnDropArmsSide) =>
        !box.RodsOnArms ? SteeringCarrier.CentreLink
        : isOnDropArmsSide ? SteeringCarrier.DropArm
        : SteeringCarrier.Idler;

    private static PickUp? PickUpOf(FrontDrawing drawing, CornerPart part) =>
        part switch
        {
            CornerPart.UpperFront => drawing.UpperFront,
            CornerPart.UpperRear => drawing.UpperRear,
            CornerPart.LowerFront => drawing.LowerFront,
            CornerPart.LowerRear => drawing.LowerRear,
            _ => drawing.TrackRodInner,
        };

    private static void TakeMeasured(FrontDrawing drawing, CornerPart part, RoadDeviations deviations)
    {
        if (PickUpOf(drawing, part) is PickUp.AtPair pair)
        {
            foreach (var side in new[] { Side.Left, Side.Right })
            {
                deviations.TakePoint(pair.PointOn(side), side, RoadParameters.Of(side, part));
            }
        }
    }

    private static void AssumeAngles(FrontDrawing drawing, RoadRemarks remarks)
    {
        if (drawing.Camber is null)
        {
            remarks.Assume(Texts.Say("road.front-of-model.the-drawings-camber-is-not"));
        }

        if (drawing.ToeIn is null)
        {
            remarks.Assume(Texts.Say("road.front-of-model.the-drawings-toe-in-is"));
        }
    }
}
