namespace Plumbmark.Engine.Linkage;

public sealed partial class CornerVariation
{
    // Three digits of the step lie above rounding and its square below the third derivative's share: good to about 1e-9 of the derivative.
    private const double DifferenceStep = 1e-5;

    /// <summary>How the angles answer to each parameter in one position of this corner, the wheel-centre height and the inner joint's steering held.</summary>
    /// <param name="state">A position of <see cref="Corner"/>.</param>
    /// <remarks>
    /// Exact derivatives with a ball joint: the upright is a rigid body held by five links and by the height, and the six forces of those that balance a unit load on an angle are that
    /// angle's derivatives (virtual work). With a trunnion's offset or thread, central differences of the closed-form solution.
    /// </remarks>
    public CornerSensitivity SensitivityAt(in CornerState state) =>
        Drawn.LowerEnd.ActsAsBallJoint ? SensitivityByVirtualWork(state) : SensitivityByDifferences(state);

    private CornerSensitivity SensitivityByVirtualWork(in CornerState state)
    {
        var links = new LinkConstraints(Corner, state);
        var rows = new double[6][];
        Span<double> gradients = stackalloc double[36];
        WriteGradients(state, gradients);
        links.Balance(gradients);
        for (var outcome = 0; outcome < 6; outcome++)
        {
            rows[outcome] = new double[CornerSensitivity.ParameterCount];
            links.WriteDerivatives(gradients.Slice(6 * outcome, 6), rows[outcome]);
        }

        AddBody(state, gradients, rows);
        return new(rows);
    }

    // The six loads, each over the upright's twist (v_x v_y v_z w_x w_y w_z) about the origin. s wheel axis, k steering axis, W wheel centre.
    private static void WriteGradients(in CornerState state, Span<double> gradients)
    {
        var (s, k, wheel) = (state.SpinAxis, state.SteeringAxis, state.WheelCentre);
        var (flat, side, front) = ((s.X * s.X) + (s.Y * s.Y), (k.X * k.X) + (k.Z * k.Z), (k.Y * k.Y) + (k.Z * k.Z));
        Write(gradients, 0, default, (1 / Math.Sqrt(flat)) * new Vector3(-s.Y, s.X, 0));
        Write(gradients, 1, default, new(s.X * s.Z / flat, s.Y * s.Z / flat, -1));
        Write(gradients, 2, default, new(k.X * k.Y / side, -1, k.Z * k.Y / side));
        Write(gradients, 3, default, new(1, -k.X * k.Y / front, -k.X * k.Z / front));
        Write(gradients, 4, Vector3.Forward, Vector3.Cross(wheel, Vector3.Forward));
        Write(gradients, 5, Vector3.Left, Vector3.Cross(wheel, Vector3.Left));
    }

    private static void Write(Span<double> gradients, int outcome, Vector3 linear, Vector3 angular)
    {
        var row = gradients.Slice(6 * outcome, 6);
        (row[0], row[1], row[2]) = (linear.X, linear.Y, linear.Z);
        (row[3], row[4], row[5]) = (angular.X, angular.Y, angular.Z);
    }

    // What sits on the upright: the lever pushes through the track rod; the stub axle changes the outcome itself and, by its height, where the corner stands.
    private void AddBody(in CornerState state, ReadOnlySpan<double> loads, double[][] rows)
    {
        var turn = TurnFromDrawn(state);
        var (s, flat) = (state.SpinAxis, (state.SpinAxis.X * state.SpinAxis.X) + (state.SpinAxis.Y * state.SpinAxis.Y));
        var up = turn.Turned(Vector3.Up);
        var (camber, toeIn) = SpinRates();
        var rod = (state.TrackRodOuter - state.TrackRodInner).Direction;
        for (var outcome = 0; outcome < 6; outcome++)
        {
            var rodLoad = loads[(6 * outcome) + LinkConstraints.RodRow];
            rows[outcome][(int)CornerParameter.LeverX] = -rodLoad * Vector3.Dot(rod, turn.Turned(Vector3.Forward));
            rows[outcome][(int)CornerParameter.LeverY] = -rodLoad * Vector3.Dot(rod, turn.Turned(Vector3.Left));
            rows[outcome][(int)CornerParameter.LeverZ] = -rodLoad * Vector3.Dot(rod, up);
            rows[outcome][(int)CornerParameter.StubHeight] = -loads[(6 * outcome) + LinkConstraints.HeightRow] * up.Z;
        }

        rows[4][(int)CornerParameter.StubHeight] += up.X;
        rows[5][(int)CornerParameter.StubHeight] += up.Y;
        foreach (var (parameter, rate) in new[] { (CornerParameter.StubCamber, camber), (CornerParameter.StubToeIn, toeIn) })
        {
            var ds = turn.Turned(rate);
            rows[0][(int)parameter] = -ds.Z / Math.Sqrt(flat);
            rows[1][(int)parameter] = ((s.Y * ds.X) - (s.X * ds.Y)) / flat;
        }
    }

    private (Vector3 Camber, Vector3 ToeIn) SpinRates()
    {
        var (sinCamber, cosCamber) = Math.SinCos(Math.Asin(-Drawn.SpinAxis.Z) + Amount(CornerParameter.StubCamber));
        var (sinToe, cosToe) = Math.SinCos(Math.Atan2(Drawn.SpinAxis.X, Drawn.SpinAxis.Y) + Amount(CornerParameter.StubToeIn));
        return (new(-sinCamber * sinToe, -sinCamber * cosToe, -cosCamber), new(cosCamber * cosToe, -cosCamber * sinToe, 0));
    }

    private BodyTurn TurnFromDrawn(in CornerState state)
    {
        var k = (Drawn.UpperJoint - Drawn.LowerJoint).Direction;
        var a = Vector3.Across(LeverAsMade - Drawn.UpperJoint, k).Direction;
        return new(k, a, state.SteeringAxis, Vector3.Across(state.TrackRodOuter - state.UpperJoint, state.SteeringAxis).Direction);
    }

    private CornerSensitivity SensitivityByDifferences(in CornerState state)
    {
        var rows = new double[6][];
        for (var outcome = 0; outcome < 6; outcome++)
        {
            rows[outcome] = new double[CornerSensitivity.ParameterCount];
        }

        var steered = state.TrackRodInner - Corner.Frame.TrackRodInner;
        for (var parameter = 0; parameter < CornerSensitivity.ParameterCount; parameter++)
        {
            var (more, less) = (Stepped(parameter, DifferenceStep, state, steered), Stepped(parameter, -DifferenceStep, state, steered));
            for (var outcome = 0; outcome < 6; outcome++)
            {
                rows[outcome][parameter] = (more[outcome] - less[outcome]) / (2 * DifferenceStep);
            }
        }

        return new(rows);
    }

    private double[] Stepped(int parameter, double by, in CornerState state, Vector3 steered)
    {
        double[] amounts = [.. _amounts];
        amounts[parameter] += by;
        var corner = Of(Drawn, amounts).Corner;
        var reach = corner.Solve(state.WheelCentre.Z, corner.Frame.TrackRodInner + steered, out var there);
        if (!reach.IsReached)
        {
            return [double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN];
        }

        var angles = WheelAngles.Of(there);
        return
        [
            angles.CamberRadians,
            angles.ToeInRadians,
            angles.CastorRadians,
            angles.KingPinRadians,
            there.WheelCentre.X,
            there.WheelCentre.Y,
        ];
    }
}
