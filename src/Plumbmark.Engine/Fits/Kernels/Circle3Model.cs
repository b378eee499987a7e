namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>Two residuals per point, in the plane |q - h n| - r and out of it h = q·n with q = p - c.</summary>
/// <remarks>Unknowns: centre along e1, e2 and n; rise of the plane along e1 and e2; radius.</remarks>
internal sealed class Circle3Model(Vector3[] points) : FitModel<Circle3>
{
    public override int Unknowns => 6;

    public override int Rows => 2 * points.Length;

    public override void Linearise(Circle3 state, Span<double> residuals, Span<double> jacobian)
    {
        var (e1, e2) = state.Normal.SquareDirections();
        for (var i = 0; i < points.Length; i++)
        {
            var q = points[i] - state.Centre;
            var (u, v, h) = (Vector3.Dot(q, e1), Vector3.Dot(q, e2), Vector3.Dot(q, state.Normal));
            var rho = Math.Max(Math.Sqrt((u * u) + (v * v)), double.Epsilon);
            residuals[2 * i] = rho - state.RadiusMetres;
            residuals[(2 * i) + 1] = h;
            // The plane rises by alpha u + beta v, so the normal leans back and h falls by as much.
            ReadOnlySpan<double> inPlane = [-u / rho, -v / rho, 0, h * u / rho, h * v / rho, -1];
            ReadOnlySpan<double> outOfPlane = [0, 0, -1, -u, -v, 0];
            inPlane.CopyTo(jacobian[(12 * i)..]);
            outOfPlane.CopyTo(jacobian[((12 * i) + 6)..]);
        }
    }

    public override Circle3 Move(Circle3 state, ReadOnlySpan<double> step)
    {
        var (e1, e2) = state.Normal.SquareDirections();
        var centre = state.Centre + (step[0] * e1) + (step[1] * e2) + (step[2] * state.Normal);
        var normal = (state.Normal - (step[3] * e1) - (step[4] * e2)).Direction;
        return new Circle3(centre, normal, state.RadiusMetres + step[5]);
    }
}
