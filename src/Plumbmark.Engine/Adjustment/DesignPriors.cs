namespace Plumbmark.Engine.Adjustment;

/// <summary>Gives every free coordinate a loose prior at its sketch, so that a design is never short of rank.</summary>
internal static class DesignPriors
{
    /// <summary>
    /// What any stated uncertainty counts as in a design, metres or per metre: a micrometre at the least, a metre at the most. Nothing in a garage reads
    /// finer or worse, and beside the loose prior of a decimetre a sharper figure would be taken for the only one there is.
    /// </summary>
    public static double Within(double sigma) => sigma > 0 ? Math.Clamp(sigma, 1e-6, 1) : sigma;

    public static Network Add(Network network, NetworkFit? at, double looseSigmaMetres)
    {
        var fitted = at?.Points.ToDictionary(p => p.Id, p => p, StringComparer.Ordinal) ?? [];
        var points = network.Points.Select(p => At(p, fitted.GetValueOrDefault(p.Id))).ToList();
        var priors =
            from point in points
            from axis in Enum.GetValues<Axis>()
            where point.Of(axis) is Coordinate.Free
            select new Observation.CoordinatePrior($"{point.Id} {axis}", point.Id, axis, point.SketchMetres(axis) ?? 0, looseSigmaMetres);

        // Names of priors are never looked up; readings keep theirs, and the two lists may overlap.
        var readings = network.Observations.Select(o => o with { SigmaMetres = Within(o.SigmaMetres) });
        var tools = network.Tools.Select(t => t with { ZeroSigmaMetres = Within(t.ZeroSigmaMetres), ScaleSigma = Within(t.ScaleSigma) });
        return new Network(points, [.. readings, .. priors], tools, network.MirrorPairs);
    }

    private static NetworkPoint At(NetworkPoint point, PointEstimate? fitted) =>
        point with
        {
            DropSigmaMetres = Within(point.DropSigmaMetres),
            SketchXMetres = fitted?.XMetres ?? point.SketchXMetres,
            SketchYMetres = fitted?.YMetres ?? point.SketchYMetres,
            SketchZMetres = fitted?.ZMetres ?? point.SketchZMetres,
        };
}
