namespace Plumbmark.Engine.Adjustment;

/// <summary>A finite rigid motion p' = R p + d, made from a rate of motion (t, ω) by the exponential, so that what ω turns about stands still.</summary>
/// <remarks>Source: Murray, Li and Sastry, A Mathematical Introduction to Robotic Manipulation, 1994, eq. (2.36) (from memory).</remarks>
internal readonly struct RigidStep
{
    private readonly double[] _r;
    private readonly double[] _d;

    public RigidStep(ReadOnlySpan<double> motion)
    {
        var (tx, ty, tz, wx, wy, wz) = (motion[0], motion[1], motion[2], motion[3], motion[4], motion[5]);
        var angle = Math.Sqrt(wx * wx + wy * wy + wz * wz);

        // sin θ / θ, (1 − cos θ) / θ², (θ − sin θ) / θ³; their series where θ is too small to divide by.
        const double Small = 1e-4;
        var a = angle > Small ? Math.Sin(angle) / angle : 1 - angle * angle / 6;
        var b = angle > Small ? (1 - Math.Cos(angle)) / (angle * angle) : 0.5 - angle * angle / 24;
        var c = angle > Small ? (angle - Math.Sin(angle)) / (angle * angle * angle) : 1.0 / 6 - angle * angle / 120;
        double[] cross = [0, -wz, wy, wz, 0, -wx, -wy, wx, 0];
        var square = Product(cross, cross);
        _r = Combine(a, cross, b, square);
        var v = Combine(b, cross, c, square);
        _d = [v[0] * tx + v[1] * ty + v[2] * tz, v[3] * tx + v[4] * ty + v[5] * tz, v[6] * tx + v[7] * ty + v[8] * tz];
    }

    /// <summary>Moves every point of a solution; drop errors turn with it.</summary>
    public void Apply(CompiledNetwork network, double[] x)
    {
        foreach (var point in network.Points)
        {
            Span<double> p = [Place(point, 0, x), Place(point, 1, x), Place(point, 2, x)];
            for (var axis = 0; axis < 3; axis++)
            {
                if (point.Unknown[axis] >= 0)
                {
                    x[point.Unknown[axis]] = _r[3 * axis] * p[0] + _r[3 * axis + 1] * p[1] + _r[3 * axis + 2] * p[2] + _d[axis];
                }
            }

            if (point.DropError >= 0)
            {
                var (ex, ey) = (x[point.DropError], x[point.DropError + 1]);
                x[point.DropError] = _r[0] * ex + _r[1] * ey;
                x[point.DropError + 1] = _r[3] * ex + _r[4] * ey;
            }
        }
    }

    private static double Place(PointSlot point, int axis, ReadOnlySpan<double> x) => point.IsTouched[axis] ? point.Base(axis, x) : 0;

    private static double[] Combine(double a, double[] cross, double b, double[] square)
    {
        var result = new double[9];
        for (var i = 0; i < 9; i++)
        {
            result[i] = a * cross[i] + b * square[i] + (i % 4 == 0 ? 1 : 0);
        }

        return result;
    }

    private static double[] Product(double[] a, double[] b)
    {
        var result = new double[9];
        for (var i = 0; i < 9; i++)
        {
            for (var k = 0; k < 3; k++)
            {
                result[i] += a[i / 3 * 3 + k] * b[k * 3 + i % 3];
            }
        }

        return result;
    }
}
