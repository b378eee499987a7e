namespace Plumbmark.Engine.Linkage;

/// <summary>One position of a front corner: where its joints and its wheel are, in own-side axes (y outboard), metres. <c>default</c> is not a position.</summary>
public readonly record struct CornerState
{
    /// <summary>Lower ball joint, or the middle of the trunnion's pin.</summary>
    public Vector3 LowerJoint { get; init; }

    /// <summary>Upper outer joint.</summary>
    public Vector3 UpperJoint { get; init; }

    /// <summary>Inner joint of the track rod.</summary>
    public Vector3 TrackRodInner { get; init; }

    /// <summary>Outer joint of the track rod, on the lever.</summary>
    public Vector3 TrackRodOuter { get; init; }

    /// <summary>Wheel centre.</summary>
    public Vector3 WheelCentre { get; init; }

    /// <summary>The wheel's axis, unit, outboard.</summary>
    public Vector3 SpinAxis { get; init; }

    /// <summary>The steering axis, unit, upward; it passes through <see cref="UpperJoint"/>.</summary>
    public Vector3 SteeringAxis { get; init; }

    /// <summary>Angle of the lower arm above the outboard horizontal, radians.</summary>
    public double LowerArmRadians { get; init; }

    /// <summary>The upright's motion per metre the wheel centre rises, the steering held still. A trunnion's thread creep is left out of it (below 1e-4 of its size).</summary>
    public Twist PerMetreOfTravel { get; init; }
}
