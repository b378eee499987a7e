namespace Plumbmark.Engine.Linkage;

/// <summary>
/// An upright with its steering lever and stub axle as one loose part, described from its upper joint along and around its own steering axis, so that it is the same
/// wherever it hangs. <c>default</c> has no size and fits nothing.
/// </summary>
/// <remarks>
/// Body axes: K along the steering axis, upward; A from the steering axis toward the lever's joint, at right angles to K; B = K x A. The origin is the upper joint.
/// The trunnion's offset turns K about the pin by the angle whose sine is offset / span.
/// </remarks>
public readonly record struct UprightShape
{
    /// <summary>Distance from the upper joint to the lower ball joint or the trunnion pin's middle with the steering straight ahead, metres.</summary>
    public required double SpanMetres { get; init; }

    /// <summary>The lower end.</summary>
    public LowerEnd LowerEnd { get; init; }

    /// <summary>The lever's joint along K from the upper joint, metres; negative below it.</summary>
    public required double LeverAlongMetres { get; init; }

    /// <summary>The lever's joint's distance from the steering axis, metres.</summary>
    public required double LeverAcrossMetres { get; init; }

    /// <summary>Wheel centre in body axes (K, A, B) from the upper joint, metres.</summary>
    public required Vector3 WheelCentre { get; init; }

    /// <summary>The wheel's axis in body axes (K, A, B), a unit direction pointing outboard.</summary>
    public required Vector3 SpinAxis { get; init; }

    /// <summary>
    /// How far the upright is turned in its trunnion as drawn, straight ahead, radians: the angle of A about K from the direction across the pin. Only a thread needs it.
    /// </summary>
    public double LeverBearingRadians { get; init; }

    /// <summary>The upright that joins the places of a drawing.</summary>
    public static UprightShape Between(CornerPoints drawn)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        var pin = (drawn.LowerFront - drawn.LowerRear).Direction;
        var span = Vector3.Distance(drawn.UpperJoint, drawn.LowerJoint);
        var toUpper = (drawn.UpperJoint - drawn.LowerJoint).Direction;
        var (k, across) = SteeringAxis.Of(toUpper, pin, drawn.LowerEnd.OffsetMetres / span);
        var lever = drawn.TrackRodOuter - drawn.UpperJoint;
        var along = Vector3.Dot(lever, k);
        var a = Vector3.Across(lever, k).Direction;
        var b = Vector3.Cross(k, a);
        var wheel = drawn.WheelCentre - drawn.UpperJoint;
        return new()
        {
            SpanMetres = span,
            LowerEnd = drawn.LowerEnd,
            LeverAlongMetres = along,
            LeverAcrossMetres = Vector3.Across(lever, k).Norm,
            WheelCentre = new(Vector3.Dot(wheel, k), Vector3.Dot(wheel, a), Vector3.Dot(wheel, b)),
            SpinAxis = new(Vector3.Dot(drawn.SpinAxis, k), Vector3.Dot(drawn.SpinAxis, a), Vector3.Dot(drawn.SpinAxis, b)),
            LeverBearingRadians = SteeringAxis.BearingOf(a, k, across),
        };
    }
}
