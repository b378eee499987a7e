using System.Collections.Immutable;

namespace Plumbmark.Engine.Fits;

/// <summary>How far each point lies from a fitted shape, and what that says about how well the points were measured.</summary>
/// <remarks>Square to the shape, in metres. Signed where the shape has two sides (line in a plane, plane, circle, cylinder), otherwise
/// a plain distance. Not the uncertainty of the shape: that comes from the fit's own covariance.</remarks>
public sealed class FitResiduals
{
    internal static FitResiduals Signed(double[] metres, int degreesOfFreedom) =>
        new(metres, degreesOfFreedom, metres.Sum(v => v * v), metres.Max() - metres.Min());

    internal FitResiduals(double[] metres, int degreesOfFreedom, double sumOfSquares, double zoneMetres)
    {
        Metres = [.. metres];
        DegreesOfFreedom = degreesOfFreedom;
        SumOfSquares = sumOfSquares;
        ZoneMetres = zoneMetres;
    }

    /// <summary>One value per point, in the order given, metres.</summary>
    public ImmutableArray<double> Metres { get; }

    /// <summary>Observed values less unknowns; 0 means that the shape goes through every point and nothing was checked.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>Sum of squared residuals, square metres.</summary>
    public double SumOfSquares { get; }

    /// <summary>Width of the band about this shape that holds every point, metres: the largest signed residual less the smallest,
    /// or the diameter of the tube about a line in space.</summary>
    public double ZoneMetres { get; }

    /// <summary>Standard deviation of one measured coordinate as these points show it, metres; <see langword="null"/> without a spare point.</summary>
    public double? SigmaMetres => DegreesOfFreedom > 0 ? Math.Sqrt(SumOfSquares / DegreesOfFreedom) : null;
}
