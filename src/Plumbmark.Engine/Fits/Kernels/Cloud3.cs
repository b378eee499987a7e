namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>Points in space about their centroid and at size 1, with the directions along which they spread most and least.</summary>
internal sealed class Cloud3
{
    // Points that spread this much less across than along count as one line (or one place): a nanometre per metre is below any gauge.
    private const double SpreadShare = 1e-9;

    private Cloud3(Vector3 centre, double size, Vector3[] points, double[] spread, Vector3[] directions) =>
        (Centre, Size, Points, Spread, Directions) = (centre, size, points, spread, directions);

    public Vector3 Centre { get; }

    /// <summary>Root mean square distance from the centroid, metres.</summary>
    public double Size { get; }

    /// <summary>(p - centre) / size.</summary>
    public Vector3[] Points { get; }

    /// <summary>Square roots of the sums of squares along <see cref="Directions"/>, scaled, largest first.</summary>
    public double[] Spread { get; }

    public Vector3[] Directions { get; }

    public static Cloud3? Make<TFit>(ReadOnlySpan<Vector3> points, int needed, bool mayBeCollinear, out FitOutcome<TFit>? refusal)
        where TFit : class
    {
        refusal = null;
        for (var i = 0; i < points.Length; i++)
        {
            if (!points[i].IsFinite)
            {
                refusal = new FitOutcome<TFit>.NotANumber(i);
                return null;
            }
        }

        if (points.Length < needed)
        {
            refusal = new FitOutcome<TFit>.TooFewPoints(points.Length, needed);
            return null;
        }

        var cloud = About(points);
        if (cloud is null || (!mayBeCollinear && cloud.Spread[1] <= SpreadShare * cloud.Spread[0]))
        {
            refusal = new FitOutcome<TFit>.Undetermined(cloud is null ? Degeneracy.Coincident : Degeneracy.Collinear);
            return null;
        }

        return cloud;
    }

    private static Cloud3? About(ReadOnlySpan<Vector3> points)
    {
        var (centre, largest) = (default(Vector3), 0.0);
        foreach (var p in points)
        {
            centre += 1.0 / points.Length * p;
            largest = Math.Max(largest, p.Norm);
        }

        var (size, scaled) = (0.0, new Vector3[points.Length]);
        for (var i = 0; i < points.Length; i++)
        {
            scaled[i] = points[i] - centre;
            size += Vector3.Dot(scaled[i], scaled[i]) / points.Length;
        }

        size = Math.Sqrt(size);
        // Below a few roundings of the coordinates themselves there is only one place.
        if (!(size > 1e-14 * largest))
        {
            return null;
        }

        var columns = new[] { new double[points.Length], new double[points.Length], new double[points.Length] };
        for (var i = 0; i < points.Length; i++)
        {
            scaled[i] = (1 / size) * scaled[i];
            (columns[0][i], columns[1][i], columns[2][i]) = (scaled[i].X, scaled[i].Y, scaled[i].Z);
        }

        var (values, vectors) = SingularValues.Of(columns);
        return new Cloud3(centre, size, scaled, values, Array.ConvertAll(vectors, v => new Vector3(v[0], v[1], v[2])));
    }
}
