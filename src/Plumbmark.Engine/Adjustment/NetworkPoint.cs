namespace Plumbmark.Engine.Adjustment;

/// <summary>A named point of a network as it goes into the fit; what comes out is a <see cref="PointEstimate"/>.</summary>
/// <param name="Id">The point's name, unique in its network.</param>
public sealed record NetworkPoint(string Id)
{
    /// <summary>What is known of the forward coordinate.</summary>
    public Coordinate X { get; init; } = Coordinate.Unknown;

    /// <summary>What is known of the leftward coordinate.</summary>
    public Coordinate Y { get; init; } = Coordinate.Unknown;

    /// <summary>What is known of the height.</summary>
    public Coordinate Z { get; init; } = Coordinate.Unknown;

    /// <summary>Roughly where the point is, metres: a start value, never an observation. Null: not sketched.</summary>
    public double? SketchXMetres { get; init; }

    /// <inheritdoc cref="SketchXMetres"/>
    public double? SketchYMetres { get; init; }

    /// <inheritdoc cref="SketchXMetres"/>
    public double? SketchZMetres { get; init; }

    /// <summary>
    /// Standard uncertainty of one plumb drop of this point, metres, in x and in y alike. Zero: the floor mark is the point.
    /// </summary>
    /// <remarks>
    /// mark = point + drop error. Lengths between floor marks never show this error; only another drop does
    /// (<see cref="Observation.DropShift"/>, <see cref="Observation.DropDistance"/>).
    /// </remarks>
    public double DropSigmaMetres { get; init; }

    /// <summary>What is known of one coordinate.</summary>
    public Coordinate Of(Axis axis) =>
        axis switch
        {
            Axis.X => X,
            Axis.Y => Y,
            _ => Z,
        };

    /// <summary>The sketched value of one coordinate, metres.</summary>
    public double? SketchMetres(Axis axis) =>
        axis switch
        {
            Axis.X => SketchXMetres,
            Axis.Y => SketchYMetres,
            _ => SketchZMetres,
        };
}
