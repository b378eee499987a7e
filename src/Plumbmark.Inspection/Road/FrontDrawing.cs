using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// A double-wishbone front suspension as drawn, at ride height, straight ahead. Places are given for the left side in the car's axes (x forward, y left, z up); the right side is its
/// mirror image. What is not known is null, and the answer says what is missing.
/// </summary>
public sealed record FrontDrawing
{
    /// <summary>Front pivot of the upper arm.</summary>
    public PickUp? UpperFront { get; init; }

    /// <summary>Rear pivot of the upper arm.</summary>
    public PickUp? UpperRear { get; init; }

    /// <summary>Front pivot of the lower arm.</summary>
    public PickUp? LowerFront { get; init; }

    /// <summary>Rear pivot of the lower arm.</summary>
    public PickUp? LowerRear { get; init; }

    /// <summary>The track rod's inner joint.</summary>
    public PickUp? TrackRodInner { get; init; }

    /// <summary>The upper outer joint.</summary>
    public Place? UpperJoint { get; init; }

    /// <summary>The lower outer joint, or the middle of the trunnion's pin.</summary>
    public Place? LowerJoint { get; init; }

    /// <summary>The track rod's joint on the steering lever.</summary>
    public Place? LeverJoint { get; init; }

    /// <summary>The wheel centre.</summary>
    public Place? WheelCentre { get; init; }

    /// <summary>Camber as drawn.</summary>
    public Angle? Camber { get; init; }

    /// <summary>Toe-in of one wheel as drawn; half of the total.</summary>
    public Angle? ToeIn { get; init; }

    /// <summary>How the upper arm is made.</summary>
    public ArmMake UpperArm { get; init; }

    /// <summary>How the lower arm is made.</summary>
    public ArmMake LowerArm { get; init; }

    /// <summary>How far outboard of the trunnion's pin the steering axis passes; null for a ball joint.</summary>
    public Length? TrunnionOffset { get; init; }

    /// <summary>How far one turn of toe-out steer screws the upright out of its trunnion; null for a ball joint or a plain trunnion.</summary>
    public Length? TrunnionLead { get; init; }

    /// <summary>Wheel centre to road, tyre loaded; null when not known, and then nothing is said about the road.</summary>
    public Length? LoadedRadius { get; init; }

    /// <summary>How far the wheel may rise from ride height.</summary>
    public Length? Bump { get; init; }

    /// <summary>How far the wheel may drop from ride height.</summary>
    public Length? Rebound { get; init; }

    /// <summary>The steering; null is a rack along the line of its inner joints.</summary>
    public SteeringBoxDrawing? SteeringBox { get; init; }
}
