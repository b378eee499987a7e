using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>
/// The frame's points where the readings put them, with the full covariance of all coordinates: what every comparison starts from.
/// Estimates, not readings.
/// </summary>
/// <remarks>Metres. x forward, y left, z up; how the frame lies in x and y is arbitrary until <see cref="FramePlacing"/> has turned it.</remarks>
internal sealed class MeasuredFrame
{
    private readonly int[,] _place;

    /// <summary>Puts points and coordinates together.</summary>
    /// <param name="points">The frame's points.</param>
    /// <param name="coordinates">For each known coordinate the number of its point and 0, 1, 2 for x, y, z. x and y come both or not at all.</param>
    /// <param name="values">The coordinates.</param>
    /// <param name="covariance">Their covariance (k = 1), square metres.</param>
    public MeasuredFrame(
        IReadOnlyList<FramePoint> points,
        IReadOnlyList<(int Point, int Axis)> coordinates,
        double[] values,
        double[,] covariance
    )
    {
        (Points, Coordinates, Values, Covariance) = (points, coordinates, values, covariance);
        Pairs = FramePairs.Of(points);
        _place = new int[points.Count, 3];
        for (var p = 0; p < points.Count; p++)
        {
            (_place[p, 0], _place[p, 1], _place[p, 2]) = (-1, -1, -1);
        }

        for (var c = 0; c < coordinates.Count; c++)
        {
            _place[coordinates[c].Point, coordinates[c].Axis] = c;
        }
    }

    public IReadOnlyList<FramePoint> Points { get; }

    public IReadOnlyList<FramePair> Pairs { get; }

    public IReadOnlyList<(int Point, int Axis)> Coordinates { get; }

    public double[] Values { get; }

    public double[,] Covariance { get; }

    /// <summary>By how much it has been turned in plan since it was put together, radians.</summary>
    public double TurnRadians { get; private init; }

    /// <summary>For each coordinate whether it is only drawn and not measured; empty when all are measured. A plan is made before the readings are.</summary>
    public IReadOnlyList<bool> IsOnlyDrawn { get; init; } = [];

    /// <summary>Whether the readings put the point in plan.</summary>
    public bool HasPlan(int point) => _place[point, 0] >= 0;

    /// <summary>Whether the readings give the point a height.</summary>
    public bool HasHeight(int point) => _place[point, 2] >= 0;

    /// <summary>Where a coordinate stands in <see cref="Values"/>; -1 when it is not known.</summary>
    public int Place(int point, int axis) => _place[point, axis];

    public double X(int point) => Values[_place[point, 0]];

    public double Y(int point) => Values[_place[point, 1]];

    public double Z(int point) => Values[_place[point, 2]];

    /// <summary>The variance of a sum of coordinates, square metres.</summary>
    public double Variance(IReadOnlyList<Term> terms) => CovarianceOf(terms, terms);

    /// <summary>The covariance of two sums of coordinates, square metres.</summary>
    public double CovarianceOf(IReadOnlyList<Term> a, IReadOnlyList<Term> b)
    {
        var sum = 0.0;
        foreach (var s in a)
        {
            foreach (var t in b)
            {
                sum += s.Factor * t.Factor * Covariance[s.Coordinate, t.Coordinate];
            }
        }

        return sum;
    }

    /// <summary>The same frame turned in plan about the origin and then moved; heights stay as they are.</summary>
    public MeasuredFrame Moved(double angleRadians, double dxMetres, double dyMetres)
    {
        var (sin, cos) = Math.SinCos(angleRadians);
        var values = (double[])Values.Clone();
        var turned = (double[,])Covariance.Clone();
        for (var p = 0; p < Points.Count; p++)
        {
            if (!HasPlan(p))
            {
                continue;
            }

            var (ix, iy) = (_place[p, 0], _place[p, 1]);
            values[ix] = (cos * Values[ix]) - (sin * Values[iy]) + dxMetres;
            values[iy] = (sin * Values[ix]) + (cos * Values[iy]) + dyMetres;
            for (var k = 0; k < values.Length; k++)
            {
                (turned[ix, k], turned[iy, k]) = (
                    (cos * turned[ix, k]) - (sin * turned[iy, k]),
                    (sin * turned[ix, k]) + (cos * turned[iy, k])
                );
            }

            for (var k = 0; k < values.Length; k++)
            {
                (turned[k, ix], turned[k, iy]) = (
                    (cos * turned[k, ix]) - (sin * turned[k, iy]),
                    (sin * turned[k, ix]) + (cos * turned[k, iy])
                );
            }
        }

        return new MeasuredFrame(Points, Coordinates, values, turned)
        {
            TurnRadians = TurnRadians + angleRadians,
            IsOnlyDrawn = IsOnlyDrawn,
        };
    }

    /// <summary>The same frame with every uncertainty enlarged, because the readings disagree more than their tools explain.</summary>
    public MeasuredFrame WithUncertaintyTimes(double factor)
    {
        var covariance = (double[,])Covariance.Clone();
        for (var i = 0; i < Values.Length; i++)
        {
            for (var j = 0; j < Values.Length; j++)
            {
                covariance[i, j] *= factor * factor;
            }
        }

        return new MeasuredFrame(Points, Coordinates, Values, covariance) { TurnRadians = TurnRadians, IsOnlyDrawn = IsOnlyDrawn };
    }
}
