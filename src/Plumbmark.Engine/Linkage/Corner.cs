namespace Plumbmark.Engine.Linkage;

/// <summary>
/// One front corner assembled: the parts of <see cref="CornerParts"/> hung on the pick-ups of a <see cref="CornerFrame"/>. Asked for a wheel-centre height and a place of the
/// track rod's inner joint, it answers with every joint's place. Own-side axes: x forward, y outboard, z up, metres.
/// </summary>
/// <remarks>
/// Assumes rigid parts and joints without play. The lower arm's angle is found by Newton's method on the wheel centre's height; everything above it is closed form: circle and
/// sphere for the upper joint, circle and sphere for the steering lever. Asking allocates nothing.
/// </remarks>
public sealed partial class Corner
{
    // 1e-13 m keeps the wheel-centre height a thousand times finer than the 1e-10 m promised for the links; Newton doubles its digits each step.
    private const double HeightToleranceMetres = 1e-13;
    private const int MostSteps = 40;
    private const double LongestStepRadians = 0.35;

    private readonly ArmPath _upper;
    private readonly ArmPath _lower;
    private readonly UprightShape _upright;
    private readonly double _rod;
    private readonly int _upperBranch;
    private readonly int _leverBranch;
    private readonly double _lowerJointAboveWheel;
    private readonly double _alongFromUpper;

    /// <summary>Hangs the parts on the pick-ups.</summary>
    public Corner(in CornerFrame frame, CornerParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        Frame = frame;
        Parts = parts;
        _upper = ArmPath.Of(parts.Upper, frame.UpperFront, frame.UpperRear);
        _lower = ArmPath.Of(parts.Lower, frame.LowerFront, frame.LowerRear);
        _upright = parts.Upright;
        _rod = parts.TrackRodMetres;
        _upperBranch = parts.UpperBranch;
        _leverBranch = parts.LeverBranch;
        _lowerJointAboveWheel = parts.LowerJointAboveWheelMetres;
        _alongFromUpper = Math.Sqrt((_upright.SpanMetres * _upright.SpanMetres) - Square(_upright.LowerEnd.OffsetMetres));
    }

    /// <summary>The corner of a drawing.</summary>
    public static Corner Of(CornerPoints drawn) => new(CornerFrame.Of(drawn), CornerParts.Of(drawn));

    /// <summary>The pick-ups.</summary>
    public CornerFrame Frame { get; }

    /// <summary>The parts.</summary>
    public CornerParts Parts { get; }

    /// <summary>The upper joint's circle.</summary>
    public ArmPath UpperPath => _upper;

    /// <summary>The lower joint's circle.</summary>
    public ArmPath LowerPath => _lower;

    /// <summary>Where everything is with the wheel centre at a height, the steering straight ahead.</summary>
    /// <param name="wheelCentreHeightMetres">z of the wheel centre in the frame's axes, metres.</param>
    public CornerPosition At(double wheelCentreHeightMetres) => At(wheelCentreHeightMetres, Frame.TrackRodInner);

    /// <summary>Where everything is with the wheel centre at a height and the track rod's inner joint held at a place.</summary>
    /// <param name="wheelCentreHeightMetres">z of the wheel centre in the frame's axes, metres.</param>
    /// <param name="trackRodInner">Inner joint of the track rod, metres, y outboard.</param>
    public CornerPosition At(double wheelCentreHeightMetres, Vector3 trackRodInner)
    {
        var reach = Solve(wheelCentreHeightMetres, trackRodInner, out var state);
        return reach.IsReached ? new CornerPosition.Stands(state) : new CornerPosition.OutOfReach(reach);
    }

    /// <summary>The same as <see cref="At(double, Vector3)"/> without an object for the answer: for curves and simulations.</summary>
    /// <param name="wheelCentreHeightMetres">z of the wheel centre in the frame's axes, metres.</param>
    /// <param name="trackRodInner">Inner joint of the track rod, metres, y outboard.</param>
    /// <param name="state">The position; <c>default</c> when it is not reached.</param>
    public Reach Solve(double wheelCentreHeightMetres, Vector3 trackRodInner, out CornerState state)
    {
        state = default;
        if (!_upper.Closes || !_lower.Closes || !double.IsFinite(wheelCentreHeightMetres) || !trackRodInner.IsFinite)
        {
            return new(ReachLimit.NotANumber, double.NaN);
        }

        var angle = FirstGuess(wheelCentreHeightMetres);
        var reach = Place(angle, trackRodInner, out var placed);
        for (var retreat = 0; !reach.IsReached && retreat < MostSteps; retreat++)
        {
            // The guess lies beyond the linkage's reach: walk back toward the level arm until something stands, then climb from there.
            angle *= 0.8;
            reach = Place(angle, trackRodInner, out placed);
        }

        return reach.IsReached ? Climb(wheelCentreHeightMetres, trackRodInner, angle, placed, out state) : reach;
    }

    private Reach Climb(double height, Vector3 inner, double angle, Placement placed, out CornerState state)
    {
        var reach = new Reach(ReachLimit.LowerArm, 0);
        for (var step = 0; step < MostSteps; step++)
        {
            var miss = height - placed.Wheel.Z;
            if (Math.Abs(miss) <= HeightToleranceMetres)
            {
                state = placed.ToState(inner, angle);
                return default;
            }

            var stride = Math.Clamp(miss / placed.WheelRate.Z, -LongestStepRadians, LongestStepRadians);
            var next = angle + stride;
            var tried = Place(next, inner, out var there);
            for (var half = 0; !tried.IsReached && half < MostSteps; half++)
            {
                reach = tried;
                stride *= 0.5;
                next = angle + stride;
                tried = Place(next, inner, out there);
            }

            // Newton's last digits can dance at the rounding level: accept when a step no longer moves the arm.
            if (!tried.IsReached || Math.Abs(stride) < 1e-15)
            {
                break;
            }

            angle = next;
            placed = there;
        }

        return Closest(height, inner, angle, placed, reach, out state);
    }

    private static Reach Closest(double height, Vector3 inner, double angle, in Placement placed, Reach reach, out CornerState state)
    {
        var miss = Math.Abs(height - placed.Wheel.Z);
        var isThere = miss <= 10 * HeightToleranceMetres;
        state = isThere ? placed.ToState(inner, angle) : default;
        return isThere ? default : reach with { ShortByMetres = Math.Max(reach.ShortByMetres, miss) };
    }

    private double FirstGuess(double wheelCentreHeight)
    {
        // z = C + R (o cos t + u sin t) = C + R A sin(t + f)
        var amplitude = Math.Sqrt(Square(_lower.Outward.Z) + Square(_lower.Upward.Z));
        var sine = (wheelCentreHeight + _lowerJointAboveWheel - _lower.Centre.Z) / (_lower.RadiusMetres * amplitude);
        return Math.Asin(Math.Clamp(sine, -1, 1)) - Math.Atan2(_lower.Outward.Z, _lower.Upward.Z);
    }

    private static double Square(double value) => value * value;
}
