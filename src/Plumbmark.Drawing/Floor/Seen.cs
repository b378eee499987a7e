using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>A point as one view sees it, in metres: across to the right of the page and up it.</summary>
/// <param name="Placed">The point.</param>
/// <param name="AcrossMetres">Where it should be, to the right; where it is, when nothing says where it should be.</param>
/// <param name="UpMetres">The same, up the page.</param>
/// <param name="DeviationAcrossMetres">How far it is from there to the right.</param>
/// <param name="DeviationUpMetres">How far it is from there up the page.</param>
/// <param name="Spread">How surely it is known in this view; null when not measured.</param>
internal sealed record Seen(
    PlacedPoint Placed,
    double AcrossMetres,
    double UpMetres,
    double DeviationAcrossMetres,
    double DeviationUpMetres,
    Spread? Spread
)
{
    public string Id => Placed.Id;

    public bool IsMeasured => Spread is not null;

    public double DeviationMetres => Math.Sqrt((DeviationAcrossMetres * DeviationAcrossMetres) + (DeviationUpMetres * DeviationUpMetres));

    /// <summary>The point in that view; null when the view needs a height and there is none.</summary>
    public static Seen? In(FloorView view, PlacedPoint placed)
    {
        var estimate = placed.Estimate;
        var deviation = estimate?.Deviation;
        var isPlanMeasured = placed.Source == PlaceSource.Measured;
        var (dx, dy, dz) = (deviation?.DxMetres ?? 0, deviation?.DyMetres ?? 0, deviation?.DzMetres ?? 0);
        if (!isPlanMeasured)
        {
            (dx, dy) = (0, 0);
        }

        var (x, y) = (placed.XMetres - dx, placed.YMetres - dy);
        if (view == FloorView.Plan)
        {
            // Across is -y and up is x, so the covariance of the two changes its sign.
            Spread? spread = isPlanMeasured ? PlanSpread(estimate!) : null;
            return new Seen(placed, -y, x, -dy, dx, spread);
        }

        if (estimate?.ZMetres is not { } z)
        {
            return null;
        }

        var height = new Spread(0, (estimate.UzMetres ?? 0) * (estimate.UzMetres ?? 0), 0);
        return new Seen(placed, -placed.XMetres, z - dz, 0, dz, height);
    }

    private static Spread PlanSpread(PointEstimate estimate)
    {
        var (ux, uy) = (estimate.UxMetres ?? 0, estimate.UyMetres ?? 0);
        return new Spread(uy * uy, ux * ux, -(estimate.CovarianceXyMetres2 ?? 0));
    }
}
