namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>Points of a plane about their centroid and at size 1; the flat sibling of <see cref="Cloud3"/>.</summary>
internal sealed class Cloud2
{
    private Cloud2(Point2 centre, double size, Point2[] points, double[] spread, Point2 along) =>
        (Centre, Size, Points, Spread, Along) = (centre, size, points, spread, along);

    public Point2 Centre { get; }

    /// <summary>Root mean square distance from the centroid, metres.</summary>
    public double Size { get; }

    /// <summary>(p - centre) / size.</summary>
    public Point2[] Points { get; }

    /// <summary>Square roots of the sums of squares along and across <see cref="Along"/>, scaled.</summary>
    public double[] Spread { get; }

    public Point2 Along { get; }

    public static Cloud2? Make<TFit>(ReadOnlySpan<Point2> points, int needed, bool mayBeCollinear, out FitOutcome<TFit>? refusal)
        where TFit : class
    {
        var inSpace = new Vector3[points.Length];
        for (var i = 0; i < points.Length; i++)
        {
            inSpace[i] = new Vector3(points[i].X, points[i].Y, 0);
        }

        var cloud = Cloud3.Make(inSpace, needed, mayBeCollinear, out refusal);
        return cloud is null
            ? null
            : new Cloud2(
                new Point2(cloud.Centre.X, cloud.Centre.Y),
                cloud.Size,
                Array.ConvertAll(cloud.Points, p => new Point2(p.X, p.Y)),
                cloud.Spread,
                new Point2(cloud.Directions[0].X, cloud.Directions[0].Y)
            );
    }
}
