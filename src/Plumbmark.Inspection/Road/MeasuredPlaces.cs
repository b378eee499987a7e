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

    /// <summary>Where a coordinate is, metres; null when it was not measured.</summary>
    public double? Value(string point, int axis) => _index.TryGetValue((point, axis), out var i) ? _coordinates[i].Value : null;

    /// <summary>How far a coordinate is off its drawing, metres; null when it was not measured or nothing tells where it should be.</summary>
    public double? Deviation(string point, int axis) => _index.TryGetValue((point, axis), out var i) ? _coordinates[i].Deviation : null;

    /// <summary>Covariance of two coordinates, square metres; zero when either was not measured.</summary>
    public double Covariance((string Point, int Axis) a, (string Point, int Axis) b) =>
        _index.TryGetValue(a, out var i) && _index.TryGetValue(b, out var j) ? _covariance[i, j] : 0;
}
