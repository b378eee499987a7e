using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// What the Floor found of the frame's points, as the Road needs it: where each coordinate is, how far it is off its drawing, and how sure all of them are together. Car axes
/// (x forward, y left, z up); axis 0, 1, 2 is x, y, z.
/// </summary>
public sealed class MeasuredPlaces
{
    private readonly Dictionary<(string Point, int Axis), int> _index = [];
    private readonly List<(double Value, double? Deviation)> _coordinates = [];
    private readonly double[,] _covariance;

    private MeasuredPlaces(IReadOnlyList<Coordinate> coordinates, double[,] covariance)
    {
        foreach (var c in coordinates)
        {
            _index.Add((c.Point, c.Axis), _coordinates.Count);
            _coordinates.Add((c.ValueMetres, c.DeviationMetres));
        }

        _covariance = covariance;
    }

    /// <summary>Nothing measured.</summary>
    public static MeasuredPlaces None { get; } = new([], new double[0, 0]);

    /// <summary>One coordinate of a point.</summary>
    /// <param name="Point">The point.</param>
    /// <param name="Axis">0, 1 or 2.</param>
    /// <param name="ValueMetres">Where it is, metres.</param>
    /// <param name="DeviationMetres">How far it is off where it should be, metres; null when nothing tells where that is.</param>
    public sealed record Coordinate(string Point, int Axis, double ValueMetres, double? DeviationMetres);

    /// <summary>Coordinates with their joint covariance, square metres, in the same order.</summary>
    public static MeasuredPlaces Of(IReadOnlyList<Coordinate> coordinates, double[,] covarianceMetres2)
    {
        ArgumentNullException.ThrowIfNull(coordinates);
        ArgumentNullException.ThrowIfNull(covarianceMetres2);
        return new(coordinates, covarianceMetres2);
    }

    /// <summary>The points of a Floor's answer. It tells how sure each point is, not what two points share, so that points count as independent here.</summary>
    public static MeasuredPlaces Of(FloorAnswer floor)
    {
        ArgumentNullException.ThrowIfNull(floor);
        var coordinates = floor.Points.SelectMany(CoordinatesOf).ToList();
        var covariance = new double[coordinates.Count, coordinates.Count];
        var byId = floor.Points.ToDictionary(p => p.Id, StringComparer.Ordinal);
        for (var i = 0; i < coordinates.Count; i++)
        {
            for (var j = 0; j < coordinates.Count; j++)
            {
                var (a, b) = (coordinates[i], coordinates[j]);
                covariance[i, j] = a.Point == b.Point ? CovarianceOf(byId[a.Point], a.Axis, b.Axis) : 0;
            }
        }

        return new(coordinates, covariance);
    }

    /// <summary>Where a coordinate is, metres; null when it was not measured.</summary>
    public double? Value(string point, int axis) => _index.TryGetValue((point, axis), out var i) ? _coordinates[i].Value : null;

    /// <summary>How far a coordinate is off its drawing, metres; null when it was not measured or nothing tells where it should be.</summary>
    public double? Deviation(string point, int axis) => _index.TryGetValue((point, axis), out var i) ? _coordinates[i].Deviation : null;

    /// <summary>Covariance of two coordinates, square metres; zero when either was not measured.</summary>
    public double Covariance((string Point, int Axis) a, (string Point, int Axis) b) =>
        _index.TryGetValue(a, out var i) && _index.TryGetValue(b, out var j) ? _covariance[i, j] : 0;

    private static IEnumerable<Coordinate> CoordinatesOf(PointEstimate p)
    {
        double?[] values = [p.XMetres, p.YMetres, p.ZMetres];
        double?[] deviations = [p.Deviation?.DxMetres, p.Deviation?.DyMetres, p.Deviation?.DzMetres];
        return Enumerable
            .Range(0, 3)
            .Where(i => values[i] is not null)
            .Select(i => new Coordinate(p.Id, i, values[i]!.Value, deviations[i]));
    }

    private static double CovarianceOf(PointEstimate p, int a, int b) =>
        (a, b) switch
        {
            (0, 0) => Square(p.UxMetres),
            (1, 1) => Square(p.UyMetres),
            (2, 2) => Square(p.UzMetres),
            (0, 1) or (1, 0) => p.CovarianceXyMetres2 ?? 0,
            _ => 0,
        };

    private static double Square(double? u) => (u ?? 0) * (u ?? 0);
}
