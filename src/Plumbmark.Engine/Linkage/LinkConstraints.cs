namespace Plumbmark.Engine.Linkage;

/// <summary>
/// The six conditions that hold an upright in one position - two from each arm, one from the track rod, one from the height - as rows over its twist, and how each condition answers to
/// the pivots and the sizes of the parts.
/// </summary>
/// <remarks>
/// A joint at r on the upright moves by v + w x r. Two-half arm, link from pivot P of length l, unit u from P to the joint: u.(v + w x r) = dl + u.dP. One-piece arm, middle M, spacing
/// d, axis a, reach rho along unit n, s ahead of the middle: along the axis a.dr - a.dM + rho n.(dF - dR)/d = ds; from the middle g.dr - g.dM = (s ds + rho drho)/f with g = (r - M)/f.
/// </remarks>
internal sealed class LinkConstraints
{
    public const int RodRow = 4;
    public const int HeightRow = 5;

    private readonly double[] _rows = new double[36];
    private readonly double[] _parameters = new double[6 * CornerSensitivity.ParameterCount];

    public LinkConstraints(Corner corner, in CornerState state)
    {
        var k = state.SteeringAxis;
        WriteArm(0, corner.UpperPath, corner.Parts.Upper, state.UpperJoint, CornerParameter.UpperFrontX, CornerParameter.UpperArmFirst);
        WriteArm(2, corner.LowerPath, corner.Parts.Lower, state.LowerJoint, CornerParameter.LowerFrontX, CornerParameter.LowerArmFirst);
        var rod = (state.TrackRodOuter - state.TrackRodInner).Direction;
        WriteRow(RodRow, rod, state.TrackRodOuter);
        Set(RodRow, CornerParameter.TrackRodInnerX, rod);
        Set(RodRow, CornerParameter.TrackRodLength, 1);
        WriteRow(HeightRow, Vector3.Up, state.WheelCentre);

        // A longer upright carries its lower joint down the steering axis by the growth: the lower arm's two conditions see it.
        Set(2, CornerParameter.UprightSpan, Vector3.Dot(RowDirection(2), k));
        Set(3, CornerParameter.UprightSpan, Vector3.Dot(RowDirection(3), k));
    }

    // Replaces each of the six loads by the conditions' forces: solves (rows)^T force = load by elimination with partial pivoting.
    public void Balance(Span<double> loads)
    {
        Span<double> m = stackalloc double[36];
        for (var i = 0; i < 6; i++)
        {
            for (var j = 0; j < 6; j++)
            {
                m[(6 * i) + j] = _rows[(6 * j) + i];
            }
        }

        for (var pivot = 0; pivot < 6; pivot++)
        {
            Exchange(m, loads, pivot, LargestBelow(m, pivot));
            for (var row = pivot + 1; row < 6; row++)
            {
                Eliminate(m, loads, pivot, row);
            }
        }

        for (var load = 0; load < 6; load++)
        {
            BackSubstitute(m, loads.Slice(6 * load, 6));
        }
    }

    // The change of one outcome per unit of each parameter: force times what the parameter asks of the condition.
    public void WriteDerivatives(ReadOnlySpan<double> forces, Span<double> derivatives)
    {
        for (var parameter = 0; parameter < CornerSensitivity.ParameterCount; parameter++)
        {
            var sum = 0.0;
            for (var row = 0; row < 6; row++)
            {
                sum += forces[row] * _parameters[(row * CornerSensitivity.ParameterCount) + parameter];
            }

            derivatives[parameter] = sum;
        }
    }

    private void WriteArm(int row, in ArmPath path, in ArmShape arm, Vector3 joint, CornerParameter frontX, CornerParameter first)
    {
        var (rearX, second) = (frontX + 3, first + 1);
        if (arm.Make == ArmMake.TwoHalves)
        {
            var (front, rear) = ((joint - path.FrontPivot).Direction, (joint - path.RearPivot).Direction);
            WriteRow(row, front, joint);
            Set(row, frontX, front);
            Set(row, first, 1);
            WriteRow(row + 1, rear, joint);
            Set(row + 1, rearX, rear);
            Set(row + 1, second, 1);
            return;
        }

        var fromMiddle = joint - (0.5 * (path.FrontPivot + path.RearPivot));
        var (reach, distance) = (joint - path.Centre, fromMiddle.Norm);
        var perSpacing = (1 / Vector3.Distance(path.FrontPivot, path.RearPivot)) * reach;
        WriteRow(row, path.Axis, joint);
        Set(row, frontX, (0.5 * path.Axis) - perSpacing);
        Set(row, rearX, (0.5 * path.Axis) + perSpacing);
        Set(row, first, 1);
        var g = (1 / distance) * fromMiddle;
        WriteRow(row + 1, g, joint);
        Set(row + 1, frontX, 0.5 * g);
        Set(row + 1, rearX, 0.5 * g);
        Set(row + 1, first, arm.FirstMetres / distance);
        Set(row + 1, second, arm.SecondMetres / distance);
    }

    private void WriteRow(int row, Vector3 direction, Vector3 point)
    {
        var moment = Vector3.Cross(point, direction);
        var at = 6 * row;
        (_rows[at], _rows[at + 1], _rows[at + 2]) = (direction.X, direction.Y, direction.Z);
        (_rows[at + 3], _rows[at + 4], _rows[at + 5]) = (moment.X, moment.Y, moment.Z);
    }

    private Vector3 RowDirection(int row) => new(_rows[6 * row], _rows[(6 * row) + 1], _rows[(6 * row) + 2]);

    private void Set(int row, CornerParameter parameter, double value) =>
        _parameters[(row * CornerSensitivity.ParameterCount) + (int)parameter] = value;

    private void Set(int row, CornerParameter x, Vector3 value)
    {
        Set(row, x, value.X);
        Set(row, x + 1, value.Y);
        Set(row, x + 2, value.Z);
    }

    private static int LargestBelow(ReadOnlySpan<double> m, int pivot)
    {
        var largest = pivot;
        for (var row = pivot + 1; row < 6; row++)
        {
            largest = Math.Abs(m[(6 * row) + pivot]) > Math.Abs(m[(6 * largest) + pivot]) ? row : largest;
        }

        return largest;
    }

    private static void Exchange(Span<double> m, Span<double> loads, int a, int b)
    {
        for (var i = 0; i < 6 && a != b; i++)
        {
            (m[(6 * a) + i], m[(6 * b) + i]) = (m[(6 * b) + i], m[(6 * a) + i]);
            (loads[(6 * i) + a], loads[(6 * i) + b]) = (loads[(6 * i) + b], loads[(6 * i) + a]);
        }
    }

    private static void Eliminate(Span<double> m, Span<double> loads, int pivot, int row)
    {
        var factor = m[(6 * row) + pivot] / m[(6 * pivot) + pivot];
        for (var i = 0; i < 6; i++)
        {
            m[(6 * row) + i] -= factor * m[(6 * pivot) + i];
            loads[(6 * i) + row] -= factor * loads[(6 * i) + pivot];
        }
    }

    private static void BackSubstitute(ReadOnlySpan<double> m, Span<double> load)
    {
        for (var row = 5; row >= 0; row--)
        {
            for (var i = row + 1; i < 6; i++)
            {
                load[row] -= m[(6 * row) + i] * load[i];
            }

            load[row] /= m[(6 * row) + row];
        }
    }
}
