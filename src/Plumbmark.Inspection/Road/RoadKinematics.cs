using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// From everything found minus drawn to the basic numbers of both sides, and their slopes. What the drawing does not tell stays not a number; so does what the linkage cannot reach.
/// </summary>
internal sealed class RoadKinematics
{
    /// <summary>How many basic numbers a side has.</summary>
    public const int BasicsPerSide = (int)Basic.RearOutboard + 1;

    /// <summary>How many basic numbers there are.</summary>
    public const int BasicCount = 2 * BasicsPerSide;

    /// <summary>The inner wheel's turn at which the outer one's is told: 20 degrees, as books print it.</summary>
    public const double InnerTurnRadians = 20 * Math.PI / 180;

    // Central difference of the steering input, metres of rack or radians of drop arm: its square is below the outer turn's rounding on any sheet.
    private const double InputStep = 1e-4;
    private const double RearStepMetres = 1e-5;

    /// <summary>The left and right corners as drawn, own-side axes; null when the drawing is not complete.</summary>
    public (CornerPoints Left, CornerPoints Right)? Front { get; init; }

    /// <summary>The steering gear as drawn, car axes; null without a complete front.</summary>
    public SteeringGear? Gear { get; init; }

    /// <summary>The rear suspension; null when its drawing is not complete.</summary>
    public RearAxle? Rear { get; init; }

    /// <summary>How far the wheel rises to full bump, metres; null when not told.</summary>
    public double? BumpMetres { get; init; }

    /// <summary>The index of a basic number.</summary>
    public static int Index(Side side, Basic basic) => ((int)side * BasicsPerSide) + (int)basic;

    /// <summary>The corner of one side with its deviations.</summary>
    public CornerVariation CornerOf(Side side, ReadOnlySpan<double> theta)
    {
        var (left, right) = Front!.Value;
        return CornerVariation.Of(
            side == Side.Left ? left : right,
            theta.Slice(RoadParameters.CornerStart(side), CornerSensitivity.ParameterCount)
        );
    }

    /// <summary>Both front corners with the gear between them.</summary>
    public FrontAxle AxleOf(CornerVariation left, CornerVariation right) =>
        new(
            left.Corner,
            right.Corner,
            Gear!.Shifted(
                left.Corner.Frame.TrackRodInner - left.Drawn.TrackRodInner,
                (right.Corner.Frame.TrackRodInner - right.Drawn.TrackRodInner).Mirrored
            )
        );

    /// <summary>The basic numbers.</summary>
    /// <param name="theta">Everything found minus drawn.</param>
    /// <param name="withTurns">Whether the outer wheel's turns are wanted too; they take most of the time.</param>
    public double[] Basics(ReadOnlySpan<double> theta, bool withTurns = true)
    {
        var basics = new double[BasicCount];
        AddBasics(theta, withTurns, basics);
        return basics;
    }

    /// <summary>The same into numbers that are there already: for trials.</summary>
    public void AddBasics(ReadOnlySpan<double> theta, bool withTurns, Span<double> basics)
    {
        basics.Fill(double.NaN);
        if (Front is not null)
        {
            var (left, right) = (CornerOf(Side.Left, theta), CornerOf(Side.Right, theta));
            AddCorner(Side.Left, left, basics);
            AddCorner(Side.Right, right, basics);
            if (withTurns)
            {
                AddTurns(left, right, basics);
            }
        }

        AddRear(theta, basics);
    }

    /// <summary>The slopes of the basic numbers, a row of <see cref="RoadParameters.Count"/> each.</summary>
    /// <param name="theta">Everything found minus drawn.</param>
    /// <param name="withTurns">Whether those of the outer wheel's turns are wanted too.</param>
    public double[][] Slopes(ReadOnlySpan<double> theta, bool withTurns = true)
    {
        var slopes = Enumerable.Range(0, BasicCount).Select(_ => new double[RoadParameters.Count]).ToArray();
        if (Front is not null)
        {
            var (left, right) = (CornerOf(Side.Left, theta), CornerOf(Side.Right, theta));
            AddCornerSlopes(Side.Left, left, slopes);
            AddCornerSlopes(Side.Right, right, slopes);
            if (withTurns)
            {
                AddTurnSlopes(left, right, slopes);
            }
        }

        AddRearSlopes(theta, slopes);
        return slopes;
    }

    private void AddCorner(Side side, CornerVariation variation, Span<double> basics)
    {
        var (corner, height) = (variation.Corner, variation.Drawn.WheelCentre.Z);
        if (corner.Solve(height, corner.Frame.TrackRodInner, out var state).IsReached)
        {
            var angles = WheelAngles.Of(state);
            basics[Index(side, Basic.Camber)] = angles.CamberRadians;
            basics[Index(side, Basic.ToeIn)] = angles.ToeInRadians;
            basics[Index(side, Basic.Castor)] = angles.CastorRadians;
            basics[Index(side, Basic.KingPin)] = angles.KingPinRadians;
            basics[Index(side, Basic.WheelForward)] = state.WheelCentre.X;
            basics[Index(side, Basic.WheelOutboard)] = state.WheelCentre.Y;
        }

        if (BumpMetres is { } bump && corner.Solve(height + bump, corner.Frame.TrackRodInner, out state).IsReached)
        {
            basics[Index(side, Basic.BumpToeIn)] = WheelAngles.Of(state).ToeInRadians;
        }
    }

    private void AddTurns(CornerVariation left, CornerVariation right, Span<double> basics)
    {
        var axle = AxleOf(left, right);
        foreach (var inner in new[] { Side.Left, Side.Right })
        {
            if (Turned(axle, left, right, inner, out var leftState, out var rightState, out _))
            {
                var outer = inner == Side.Left ? rightState : leftState;
                basics[Index(inner, Basic.OuterTurn)] = WheelAngles.Of(outer).ToeInRadians;
            }
        }
    }

    // The inner wheel toes out by the turn; the outer one then toes in by its own.
    private static bool Turned(
        FrontAxle axle,
        CornerVariation left,
        CornerVariation right,
        Side inner,
        out CornerState leftState,
        out CornerState rightState,
        out double input
    )
    {
        var (leftHeight, rightHeight) = (left.Drawn.WheelCentre.Z, right.Drawn.WheelCentre.Z);
        var steer = inner == Side.Left ? InnerTurnRadians : -InnerTurnRadians;
        var reach = axle.InputFor(leftHeight, rightHeight, steer, inner == Side.Left, out input);
        (leftState, rightState) = (default, default);
        return reach.IsReached && axle.Solve(leftHeight, rightHeight, input, out leftState, out rightState).IsReached;
    }

    private void AddRear(ReadOnlySpan<double> theta, Span<double> basics)
    {
        if (Rear?.Stand(theta) is not { Reach.IsReached: true } rear)
        {
            return;
        }

        AddWheel(Side.Left, rear.Left, basics);
        AddWheel(Side.Right, rear.Right, basics);
    }

    private static void AddWheel(Side side, in WheelStance wheel, Span<double> basics)
    {
        basics[Index(side, Basic.RearCamber)] = wheel.CamberRadians;
        basics[Index(side, Basic.RearToeIn)] = wheel.ToeInRadians;
        basics[Index(side, Basic.RearForward)] = wheel.Centre.X;
        basics[Index(side, Basic.RearOutboard)] = side == Side.Left ? wheel.Centre.Y : -wheel.Centre.Y;
    }

    private void AddCornerSlopes(Side side, CornerVariation variation, double[][] slopes)
    {
        var (corner, height, start) = (variation.Corner, variation.Drawn.WheelCentre.Z, RoadParameters.CornerStart(side));
        if (corner.Solve(height, corner.Frame.TrackRodInner, out var state).IsReached)
        {
            var s = variation.SensitivityAt(state);
            s.Camber.CopyTo(slopes[Index(side, Basic.Camber)].AsSpan(start));
            s.ToeIn.CopyTo(slopes[Index(side, Basic.ToeIn)].AsSpan(start));
            s.Castor.CopyTo(slopes[Index(side, Basic.Castor)].AsSpan(start));
            s.KingPin.CopyTo(slopes[Index(side, Basic.KingPin)].AsSpan(start));
            s.WheelForward.CopyTo(slopes[Index(side, Basic.WheelForward)].AsSpan(start));
            s.WheelOutboard.CopyTo(slopes[Index(side, Basic.WheelOutboard)].AsSpan(start));
        }

        if (BumpMetres is { } bump && corner.Solve(height + bump, corner.Frame.TrackRodInner, out state).IsReached)
        {
            variation.SensitivityAt(state).ToeIn.CopyTo(slopes[Index(side, Basic.BumpToeIn)].AsSpan(start));
        }
    }

    // The inner wheel is held at its turn, so whatever would change it is met by the steering, which also moves the outer wheel:
    //   d outer = (outer slopes) dp - (d outer / d input) / (d inner / d input) (inner slopes) dp.
    private void AddTurnSlopes(CornerVariation left, CornerVariation right, double[][] slopes)
    {
        var axle = AxleOf(left, right);
        foreach (var inner in new[] { Side.Left, Side.Right })
        {
            if (!Turned(axle, left, right, inner, out var leftState, out var rightState, out var input))
            {
                continue;
            }

            var (more, less) = (ToesAt(axle, left, right, input + InputStep), ToesAt(axle, left, right, input - InputStep));
            var (leftRate, rightRate) = (more.Left - less.Left, more.Right - less.Right);
            var ratio = inner == Side.Left ? rightRate / leftRate : leftRate / rightRate;
            var row = slopes[Index(inner, Basic.OuterTurn)];
            var (leftShare, rightShare) = inner == Side.Left ? (-ratio, 1.0) : (1.0, -ratio);
            AddScaled(left.SensitivityAt(leftState).ToeIn, leftShare, row.AsSpan(RoadParameters.CornerStart(Side.Left)));
            AddScaled(right.SensitivityAt(rightState).ToeIn, rightShare, row.AsSpan(RoadParameters.CornerStart(Side.Right)));
        }
    }

    private static (double Left, double Right) ToesAt(FrontAxle axle, CornerVariation left, CornerVariation right, double input) =>
        axle.Solve(left.Drawn.WheelCentre.Z, right.Drawn.WheelCentre.Z, input, out var l, out var r).IsReached
            ? (WheelAngles.Of(l).ToeInRadians, WheelAngles.Of(r).ToeInRadians)
            : (double.NaN, double.NaN);

    private void AddRearSlopes(ReadOnlySpan<double> theta, double[][] slopes)
    {
        if (Rear is null)
        {
            return;
        }

        var (more, less) = (new double[BasicCount], new double[BasicCount]);
        double[] varied = [.. theta];
        foreach (var parameter in Enumerable.Range(0, RoadParameters.Count).Where(IsRear))
        {
            varied[parameter] = theta[parameter] + RearStepMetres;
            AddRear(varied, more);
            varied[parameter] = theta[parameter] - RearStepMetres;
            AddRear(varied, less);
            varied[parameter] = theta[parameter];
            foreach (var side in new[] { Side.Left, Side.Right })
            {
                for (var basic = Basic.RearCamber; basic <= Basic.RearOutboard; basic++)
                {
                    var i = Index(side, basic);
                    slopes[i][parameter] = (more[i] - less[i]) / (2 * RearStepMetres);
                }
            }
        }
    }

    private static bool IsRear(int parameter) => parameter % RoadParameters.PerSide >= CornerSensitivity.ParameterCount;

    private static void AddScaled(ReadOnlySpan<double> from, double scale, Span<double> to)
    {
        for (var i = 0; i < from.Length; i++)
        {
            to[i] += scale * from[i];
        }
    }
}
