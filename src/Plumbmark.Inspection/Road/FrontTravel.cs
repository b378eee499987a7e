using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>The front wheels through their travel and their turns, for curves and drawings.</summary>
internal sealed class FrontTravel
{
    private const int CurveSteps = 16;
    private static readonly double[] s_turnDegrees = [5, 10, 15, 20, 25, 30];
    private readonly RoadModel _model;
    private readonly double[] _drawn = new double[RoadParameters.Count];
    private readonly RoadDisplay _display;

    private FrontTravel(RoadModel model, RoadDisplay display) => (_model, _display) = (model, display);

    /// <summary>The travel of a model; null without a complete front.</summary>
    public static FrontTravel? Of(RoadModel model, RoadDisplay display) => model.Kinematics.Front is null ? null : new(model, display);

    /// <summary>One side from rebound to bump; empty when neither is told. What is beyond reach is left out and said.</summary>
    public IReadOnlyList<CurvePoint> Curve(Side side, bool isDrawn)
    {
        var front = _model.Section.Front!;
        var (down, up) = (front.Rebound?.Metres ?? 0, front.Bump?.Metres ?? 0);
        if (down + up <= 0)
        {
            return [];
        }

        var variation = Variation(side, isDrawn);
        var (corner, height) = (variation.Corner, variation.Drawn.WheelCentre.Z);
        var atRide = corner.Solve(height, corner.Frame.TrackRodInner, out var ride);
        var points = new List<CurvePoint>();
        var beyond = new List<(double Travel, ReachLimit Limit)>();
        for (var step = 0; step <= CurveSteps && atRide.IsReached; step++)
        {
            var travel = -down + ((down + up) * step / CurveSteps);
            var reach = corner.Solve(height + travel, corner.Frame.TrackRodInner, out var state);
            if (reach.IsReached)
            {
                points.Add(PointOf(state, ride, travel));
            }
            else
            {
                beyond.Add((travel, reach.Limit));
            }
        }

        foreach (var way in beyond.GroupBy(b => b.Travel > 0))
        {
            // The nearest to ride height says it all.
            var (travel, limit) = way.MinBy(b => Math.Abs(b.Travel));
            _model.Remarks.Miss(BeyondReach(side, isDrawn, travel, limit));
        }

        return points;
    }

    /// <summary>Toe-out on turns.</summary>
    public IReadOnlyList<TurnPoint> Turns() =>
        [
            .. s_turnDegrees
                .Select(d => d * Math.PI / 180)
                .Select(t => new TurnPoint(
                    t,
                    Turned(t, Side.Left, isDrawn: true),
                    Turned(t, Side.Left, isDrawn: false),
                    Turned(t, Side.Right, isDrawn: false)
                ))
                .Where(t => (t.Drawn ?? t.ToTheLeft ?? t.ToTheRight) is not null),
        ];

    /// <summary>One side at ride height for a drawing; null when it does not go together as found.</summary>
    public CornerSketch? Sketch(Side side) =>
        PlacesOf(side, isDrawn: true) is { } drawn && PlacesOf(side, isDrawn: false) is { } found
            ? new CornerSketch(side, drawn, found, _model.Section.Front!.LoadedRadius?.Metres)
            : null;

    /// <summary>Where one side's steering axis meets the road; null without the loaded radius or when the corner does not go together.</summary>
    public GroundAnswer? Ground(Side side)
    {
        if (
            _model.Section.Front!.LoadedRadius is not { } radius
            || State(side, isDrawn: true) is not { } drawn
            || State(side, isDrawn: false) is not { } found
        )
        {
            return null;
        }

        var (was, now) = (GroundFigures.Of(drawn, radius.Metres), GroundFigures.Of(found, radius.Metres));
        return new(
            side,
            was.ScrubRadiusMetres,
            now.ScrubRadiusMetres,
            was.TrailMetres,
            now.TrailMetres,
            RollGeometry.Of(drawn, was.Contact).RollCentreAboveRoadMetres,
            RollGeometry.Of(found, now.Contact).RollCentreAboveRoadMetres
        );
    }

    private CurvePoint PointOf(CornerState state, CornerState ride, double travel)
    {
        var angles = WheelAngles.Of(state);
        GroundFigures? ground = _model.Section.Front!.LoadedRadius is { } radius ? GroundFigures.Of(state, radius.Metres) : null;
        var moved = state.WheelCentre - ride.WheelCentre;
        return new(
            travel,
            angles.CamberRadians,
            angles.ToeInRadians,
            angles.CastorRadians,
            angles.KingPinRadians,
            moved.Y,
            moved.X,
            ground is { } g ? RollGeometry.Of(state, g.Contact).RollCentreAboveRoadMetres : null,
            ground?.ScrubRadiusMetres,
            ground?.TrailMetres
        );
    }

    private TurnedWheels? Turned(double turn, Side inner, bool isDrawn)
    {
        var (left, right) = (Variation(Side.Left, isDrawn), Variation(Side.Right, isDrawn));
        var axle = _model.Kinematics.AxleOf(left, right);
        var (lh, rh) = (left.Drawn.WheelCentre.Z, right.Drawn.WheelCentre.Z);
        if (!axle.InputFor(lh, rh, inner == Side.Left ? turn : -turn, inner == Side.Left, out var input).IsReached)
        {
            return null;
        }

        var reach = axle.Solve(lh, rh, input, out var l, out var r);
        if (!reach.IsReached)
        {
            return null;
        }

        var (inside, outside) = inner == Side.Left ? (WheelAngles.Of(l), WheelAngles.Of(r)) : (WheelAngles.Of(r), WheelAngles.Of(l));
        return new(outside.ToeInRadians, inside.CamberRadians, outside.CamberRadians);
    }

    private CornerVariation Variation(Side side, bool isDrawn) =>
        _model.Kinematics.CornerOf(side, isDrawn ? _drawn : _model.Deviations.Amounts);

    private CornerState? State(Side side, bool isDrawn)
    {
        var variation = Variation(side, isDrawn);
        var corner = variation.Corner;
        return corner.Solve(variation.Drawn.WheelCentre.Z, corner.Frame.TrackRodInner, out var state).IsReached ? state : null;
    }

    private CornerSketch.Places? PlacesOf(Side side, bool isDrawn)
    {
        if (State(side, isDrawn) is not { } s)
        {
            return null;
        }

        var frame = Variation(side, isDrawn).Corner.Frame;
        Vector3 InCar(Vector3 own) => side == Side.Left ? own : own.Mirrored;
        return new(
            InCar(frame.UpperFront),
            InCar(frame.UpperRear),
            InCar(frame.LowerFront),
            InCar(frame.LowerRear),
            InCar(s.UpperJoint),
            InCar(s.LowerJoint),
            InCar(s.TrackRodInner),
            InCar(s.TrackRodOuter),
            InCar(s.WheelCentre),
            InCar(s.SpinAxis)
        );
    }

    private string BeyondReach(Side side, bool isDrawn, double travel, ReachLimit limit)
    {
        var which = isDrawn ? Texts.Say("road.front-travel.as-drawn") : Texts.Say("road.front-travel.as-found");
        var way = travel > 0 ? "bump" : "rebound";
        return Texts.Say(
            "road.front-travel.is-beyond-reach-from-on",
            side == Side.Left ? "Left" : "Right",
            which,
            way,
            _display.LengthSize(travel),
            FrontFit.PartOf(limit)
        );
    }
}
