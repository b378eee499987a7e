namespace Plumbmark.Engine.Adjustment;

/// <summary>Where the fit puts a point; what went in is a <see cref="NetworkPoint"/>.</summary>
/// <remarks>
/// A coordinate is null when no reading touches it, or when the readings that touch it do not determine it. Uncertainties are standard (k = 1), from the stated
/// sigmas, drop error included; multiply by <see cref="NetworkFit.Sigma0"/> for the a-posteriori values that textbooks print.
/// </remarks>
/// <param name="Id">The point's name.</param>
/// <param name="XMetres">Forward.</param>
/// <param name="YMetres">Left.</param>
/// <param name="ZMetres">Up.</param>
/// <param name="UxMetres">Standard uncertainty of x; zero for a fixed coordinate.</param>
/// <param name="UyMetres">Standard uncertainty of y; zero for a fixed coordinate.</param>
/// <param name="UzMetres">Standard uncertainty of z; zero for a fixed coordinate.</param>
public sealed record PointEstimate(
    string Id,
    double? XMetres,
    double? YMetres,
    double? ZMetres,
    double? UxMetres,
    double? UyMetres,
    double? UzMetres
)
{
    /// <summary>One coordinate, metres.</summary>
    public double? Metres(Axis axis) =>
        axis switch
        {
            Axis.X => XMetres,
            Axis.Y => YMetres,
            _ => ZMetres,
        };

    /// <summary>Standard uncertainty of one coordinate, metres.</summary>
    public double? SigmaMetres(Axis axis) =>
        axis switch
        {
            Axis.X => UxMetres,
            Axis.Y => UyMetres,
            _ => UzMetres,
        };
}
