namespace Plumbmark.Inspection.Floor;

/// <summary>Where a point is, from the readings: an estimate, not a reading.</summary>
/// <remarks>
/// Axes after ISO 8855 with the centre line of the frame as x and y = 0 on it. A coordinate is null when no reading touches it; missing is not zero.
/// </remarks>
/// <param name="Id">The point.</param>
/// <param name="XMetres">Forward; null without plan readings.</param>
/// <param name="YMetres">To the left of the centre line; null without plan readings.</param>
/// <param name="ZMetres">Above the reference; null without heights.</param>
/// <param name="UxMetres">Standard uncertainty of x.</param>
/// <param name="UyMetres">Standard uncertainty of y.</param>
/// <param name="UzMetres">Standard uncertainty of z.</param>
/// <param name="CovarianceXyMetres2">Covariance of x and y, in square metres, for the ellipse; null without plan readings.</param>
/// <param name="Deviation">How far it is from where it should be; null when nothing tells where that is.</param>
public sealed record PointEstimate(
    string Id,
    double? XMetres,
    double? YMetres,
    double? ZMetres,
    double? UxMetres,
    double? UyMetres,
    double? UzMetres,
    double? CovarianceXyMetres2,
    Deviation? Deviation
);
