namespace Plumbmark.Engine.Linkage;

// The closed-form half: everything above a given angle of the lower arm.
public sealed partial class Corner
{
    // The thread's creep changes the span by microns per degree, so the second pass already agrees to 1e-9 m and the fourth to rounding.
    private const int ThreadPasses = 4;

    // P lower joint, U upper joint, T lever joint, W wheel centre, s wheel axis, k steering axis; rates per radian of the lower arm's angle.
    private readonly struct Placement
    {
        public required Vector3 Lower { get; init; }
        public required Vector3 Upper { get; init; }
        public required Vector3 Lever { get; init; }
        public required Vector3 Wheel { get; init; }
        public required Vector3 Spin { get; init; }
        public required Vector3 Axis { get; init; }
        public required Vector3 UpperRate { get; init; }
        public required Vector3 AngularRate { get; init; }
        public required Vector3 WheelRate { get; init; }

        public CornerState ToState(Vector3 inner, double angle) =>
            new()
            {
                LowerJoint = Lower,
                UpperJoint = Upper,
                TrackRodInner = inner,
                TrackRodOuter = Lever,
                WheelCentre = Wheel,
                SpinAxis = Spin,
                SteeringAxis = Axis,
                LowerArmRadians = angle,
                PerMetreOfTravel = Twist.Through(Upper, UpperRate, AngularRate).Scaled(1 / WheelRate.Z),
            };
    }

    private Reach Place(double angle, Vector3 inner, out Placement placed)
    {
        var span = _upright.SpanMetres;
        var reach = PlaceWithSpan(angle, inner, span, out placed, out var turned);
        if (_upright.LowerEnd.LeadMetresPerTurn == 0)
        {
            return reach;
        }

        for (var pass = 1; pass < ThreadPasses && reach.IsReached; pass++)
        {
            var along = _alongFromUpper + (_upright.LowerEnd.LeadMetresPerTurn * turned / (2 * Math.PI));
            span = Math.Sqrt((along * along) + Square(_upright.LowerEnd.OffsetMetres));
            reach = PlaceWithSpan(angle, inner, span, out placed, out turned);
        }

        return reach;
    }

    private Reach PlaceWithSpan(double angle, Vector3 inner, double span, out Placement placed, out double turned)
    {
        placed = default;
        turned = 0;
        var (sine, cosine) = Math.SinCos(angle);
        var p = _lower.At(cosine, sine);
        var reach = MeetUpper(p, span, out var u);
        if (!reach.IsReached)
        {
            return reach;
        }

        var w = (1 / span) * (u - p);
        var sineOfLean = _upright.LowerEnd.OffsetMetres / span;
        var k = w;
        if (!_upright.LowerEnd.ActsAsBallJoint)
        {
            (k, var across) = SteeringAxis.Of(w, _lower.Axis, sineOfLean);
            reach = MeetLever(u, k, inner, out var bearing);
            turned = reach.IsReached ? SteeringAxis.BearingOf(bearing, k, across) - _upright.LeverBearingRadians : 0;
        }

        reach = MeetLever(u, k, inner, out var a);
        if (!reach.IsReached)
        {
            return reach;
        }

        var b = Vector3.Cross(k, a);
        var t = u + (_upright.LeverAlongMetres * k) + (_upright.LeverAcrossMetres * a);
        var wheel = u + InBody(_upright.WheelCentre, k, a, b);

        // Rates: the lower joint turns with its arm, the upper arm follows so that the span keeps its length, the lever so that the track rod keeps its own.
        var pRate = _lower.VelocityAt(p);
        var uPath = _upper.VelocityAt(u);
        var uRate = (Vector3.Dot(w, pRate) / Vector3.Dot(w, uPath)) * uPath;
        var kRate = SteeringAxis.RateOf(w, (1 / span) * (uRate - pRate), _lower.Axis, sineOfLean);
        var leaning = Vector3.Cross(k, kRate);
        var rod = t - inner;
        var arm = t - u;
        var steering = -Vector3.Dot(rod, uRate + Vector3.Cross(leaning, arm)) / Vector3.Dot(rod, Vector3.Cross(k, arm));
        var angular = leaning + (steering * k);
        placed = new()
        {
            Lower = p,
            Upper = u,
            Lever = t,
            Wheel = wheel,
            Spin = InBody(_upright.SpinAxis, k, a, b),
            Axis = k,
            UpperRate = uRate,
            AngularRate = angular,
            WheelRate = uRate + Vector3.Cross(angular, wheel - u),
        };
        return default;
    }

    // The upper joint: on the upper arm's circle (centre c, radius r) and at the span D from the lower joint. With q = P - c split into q1, q2 in the
    // circle's plane and K = (r^2 + q^2 - D^2) / (2 r):  q1 cos f + q2 sin f = K.
    private Reach MeetUpper(Vector3 lowerJoint, double span, out Vector3 upperJoint)
    {
        var q = lowerJoint - _upper.Centre;
        var r = _upper.RadiusMetres;
        var (q1, q2) = (Vector3.Dot(q, _upper.Outward), Vector3.Dot(q, _upper.Upward));
        var square = (q1 * q1) + (q2 * q2);
        var middle = (r * r) + Vector3.Dot(q, q);
        var k = (middle - (span * span)) / (2 * r);
        var left = square - (k * k);
        if (!(left >= 0))
        {
            upperJoint = default;
            return new(ReachLimit.UpperArm, ShortBy(middle, 2 * r * Math.Sqrt(square), span));
        }

        var root = _upperBranch * Math.Sqrt(left);
        upperJoint = _upper.At(((k * q1) - (q2 * root)) / square, ((k * q2) + (q1 * root)) / square);
        return default;
    }

    // The lever's direction about the steering axis: the lever joint circles the axis at c with radius r and lies at the track rod's length from the inner joint.
    private Reach MeetLever(Vector3 upperJoint, Vector3 k, Vector3 inner, out Vector3 a)
    {
        var q = inner - upperJoint - (_upright.LeverAlongMetres * k);
        var r = _upright.LeverAcrossMetres;
        var across = Vector3.Across(q, k);
        var distance = across.Norm;
        var middle = (r * r) + Vector3.Dot(q, q);
        var cosine = (middle - (_rod * _rod)) / (2 * r * distance);
        var left = 1 - (cosine * cosine);
        if (!(left >= 0))
        {
            a = default;
            return new(ReachLimit.TrackRod, ShortBy(middle, 2 * r * distance, _rod));
        }

        var toward = (1 / distance) * across;
        a = (cosine * toward) + (_leverBranch * Math.Sqrt(left) * Vector3.Cross(k, toward));
        return default;
    }

    // Distances from the sphere's centre to the circle run from sqrt(middle - spread) to sqrt(middle + spread); how far outside that the length lies, metres.
    private static double ShortBy(double middle, double spread, double length) =>
        Math.Max(length - Math.Sqrt(middle + spread), Math.Sqrt(Math.Max(0, middle - spread)) - length);

    private static Vector3 InBody(Vector3 body, Vector3 k, Vector3 a, Vector3 b) => (body.X * k) + (body.Y * a) + (body.Z * b);
}
