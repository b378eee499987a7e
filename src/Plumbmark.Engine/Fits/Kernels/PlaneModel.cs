namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>f = height above the plane; unknowns: shift along the normal, rise along e1 and e2.</summary>
internal sealed class PlaneModel(Vector3[] points) : FitModel<Plane>
{
    public override int Unknowns => 3;

    public override int Rows => points.Length;

    public override void Linearise(Plane state, Span<double> residuals, Span<double> jacobian)
    {
        var (e1, e2) = state.Normal.SquareDirections();
        for (var i = 0; i < points.Length; i++)
        {
            var q = points[i] - state.Point;
            residuals[i] = Vector3.Dot(q, state.Normal);
            (jacobian[3 * i], jacobian[(3 * i) + 1], jacobian[(3 * i) + 2]) = (-1, -Vector3.Dot(q, e1), -Vector3.Dot(q, e2));
        }
    }

    public override Plane Move(Plane state, ReadOnlySpan<double> step)
    {
        var (e1, e2) = state.Normal.SquareDirections();
        return new Plane(state.Point + (step[0] * state.Normal), (state.Normal - (step[1] * e1) - (step[2] * e2)).Direction);
    }
}
