using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>Indirect drops as observations, and what each way costs in certainty.</summary>
/// <remarks>
/// Standard uncertainties per axis, beside the drops of the marks themselves: setting two drops equally far to either side 0.3 mm, measuring a bar's
/// offset 0.5 mm, a worn hole's edge 0.3 mm, a bar's stand-off 0.5 mm. Common practice, no source.
/// </remarks>
internal static class IndirectDrops
{
    public const double MidpointMetres = 0.3e-3;
    public const double OffsetMetres = 0.5e-3;
    public const double EdgeMetres = 0.3e-3;
    public const double BarMetres = 0.5e-3;

    /// <summary>The reading as the network sees it.</summary>
    /// <param name="reading">The indirect drop.</param>
    /// <param name="ownSigmaMetres">The uncertainty its owner states; null for the usual.</param>
    /// <param name="dropSigma">Standard uncertainty of one drop of a mark.</param>
    public static Observation Observed(Reading.Indirect reading, double? ownSigmaMetres, Func<string, double> dropSigma)
    {
        double Sigma(double ofWay, double ofDrops) => ownSigmaMetres ?? double.Hypot(ofWay, ofDrops);
        double Mean(string a, string b) => double.Hypot(dropSigma(a), dropSigma(b)) / 2;
        return reading.Way switch
        {
            IndirectWay.Midpoint w => new Observation.MidpointDrop(
                reading.Id,
                reading.Point,
                w.From,
                w.To,
                Sigma(MidpointMetres, Mean(w.From, w.To))
            ),
            IndirectWay.Offset w => new Observation.OffsetDrop(
                reading.Id,
                reading.Point,
                w.Mark,
                w.Dx.Metres,
                w.Dy.Metres,
                Sigma(OffsetMetres, dropSigma(w.Mark))
            ),
            IndirectWay.HoleEdge w => new Observation.HoleEdgeDrop(
                reading.Id,
                reading.Point,
                w.Mark,
                w.Diameter.Metres,
                DirectionRadians(w.Edge),
                Sigma(EdgeMetres, dropSigma(w.Mark))
            ),
            IndirectWay.Bar w => new Observation.BarDrop(
                reading.Id,
                reading.Point,
                w.NearEnd,
                w.FarEnd,
                w.StandOff.Metres,
                Sigma(BarMetres, dropSigma(w.NearEnd))
            ),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static double DirectionRadians(EdgeSide edge) =>
        edge switch
        {
            EdgeSide.Front => 0,
            EdgeSide.Left => Math.PI / 2,
            EdgeSide.Rear => Math.PI,
            _ => -Math.PI / 2,
        };
}
