namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>f = |p - c| - r; unknowns: centre x, centre y, radius.</summary>
internal sealed class Circle2Model(Point2[] points) : FitModel<Circle2>
{
    public override int Unknowns => 3;

    public override int Rows => points.Length;

    public override void Linearise(Circle2 state, Span<double> residuals, Span<double> jacobian)
    {
        for (var i = 0; i < points.Length; i++)
        {
            var q = points[i] - state.Centre;
            var rho = q.Norm;
            residuals[i] = rho - state.RadiusMetres;
            // At the very centre the direction is not defined; any one will do for a step.
            jacobian[3 * i] = rho > 0 ? -q.X / rho : -1;
            jacobian[(3 * i) + 1] = rho > 0 ? -q.Y / rho : 0;
            jacobian[(3 * i) + 2] = -1;
        }
    }

    public override Circle2 Move(Circle2 state, ReadOnlySpan<double> step) =>
        new(state.Centre + new Point2(step[0], step[1]), state.RadiusMetres + step[2]);
}
