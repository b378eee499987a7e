namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>f = distance from the axis less the radius.</summary>
/// <remarks>Unknowns: axis point along e1 and e2, tilt of the axis towards e1 and e2, radius. With q = p - c, s = q·a, u = q·e1, v = q·e2,
/// ρ² = u² + v²: df = -(u dc1 + v dc2 + s u dα + s v dβ) / ρ - dr.</remarks>
internal sealed class CylinderModel(Vector3[] points) : FitModel<Cylinder>
{
    public override int Unknowns => 5;

    public override int Rows => points.Length;

    public override void Linearise(Cylinder state, Span<double> residuals, Span<double> jacobian)
    {
        var a = state.Axis.Direction;
        var (e1, e2) = a.SquareDirections();
        for (var i = 0; i < points.Length; i++)
        {
            var q = points[i] - state.Axis.Point;
            var (u, v, s) = (Vector3.Dot(q, e1), Vector3.Dot(q, e2), Vector3.Dot(q, a));
            var rho = Math.Max(Math.Sqrt((u * u) + (v * v)), double.Epsilon);
            residuals[i] = rho - state.RadiusMetres;
            ReadOnlySpan<double> row = [-u / rho, -v / rho, -s * u / rho, -s * v / rho, -1];
            row.CopyTo(jacobian[(5 * i)..]);
        }
    }

    public override Cylinder Move(Cylinder state, ReadOnlySpan<double> step)
    {
        var a = state.Axis.Direction;
        var (e1, e2) = a.SquareDirections();
        var direction = (a + (step[2] * e1) + (step[3] * e2)).Direction;
        var moved = state.Axis.Point + (step[0] * e1) + (step[1] * e2);
        // Keep the axis point abreast of the centroid, which is the origin here; otherwise tilt and shift grow alike.
        return new Cylinder(new Line3(moved - (Vector3.Dot(moved, direction) * direction), direction), state.RadiusMetres + step[4]);
    }
}
