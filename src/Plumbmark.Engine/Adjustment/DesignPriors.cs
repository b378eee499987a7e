namespace Plumbmark.Engine.Adjustment;

/// <summary>Gives every free coordinate a loose prior at its sketch, so that a design is never short of rank.</summary>
internal static class DesignPriors
{
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
        return new Network(points, [.. network.Observations, .. priors], network.Tools, network.MirrorPairs);
    }

    private static NetworkPoint At(NetworkPoint point, PointEstimate? fitted) =>
        point with
        {
            SketchXMetres = fitted?.XMetres ?? point.SketchXMetres,
            SketchYMetres = fitted?.YMetres ?? point.SketchYMetres,
            SketchZMetres = fitted?.ZMetres ?? point.SketchZMetres,
        };
}
