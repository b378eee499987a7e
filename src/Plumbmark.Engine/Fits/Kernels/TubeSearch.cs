namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>The narrowest tube about a line whose direction turns only a little from a given one.</summary>
internal static class TubeSearch
{
    // The tube is settled when the true radius exceeds the one the cuts allow by no more than this share of the points' size. Cuts that have grown all but
    // parallel may end the search a little earlier; the larger share is then good enough, ten nanometres on a part of one metre.
    private const double GapTolerance = 1e-12;
    private const double LastGap = 1e-8;
    private const int MostRounds = 200;
    private const int CutsPerRound = 8;

    /// <param name="Promised">By how much the radius was to shrink, seen square to the direction before.</param>
    public sealed record Tube(Line3 Line, double Radius, double Promised, int[] Touching, double Sensitivity);

    public static Tube? Narrow(Vector3[] points, Line3 line)
    {
        var (e1, e2) = line.Direction.SquareDirections();
        var (u, v, s) = Coordinates(points, line, e1, e2);
        var present = Largest(u, v, [0, 0, 0, 0], s);
        if (present <= GapTolerance)
        {
            return new Tube(line, 0, 0, [.. Enumerable.Range(0, points.Length)], 0);
        }

        var (exchange, cuts) = (new Exchange(4), new List<(int Point, double C, double D)>());
        for (var i = 0; i < points.Length; i++)
        {
            exchange.AddTwoSided(u[i], [-1, 0, -s[i], 0]);
            exchange.AddTwoSided(v[i], [0, -1, 0, -s[i]]);
            cuts.AddRange([(i, 1, 0), (i, -1, 0), (i, 0, 1), (i, 0, -1)]);
        }

        if (!exchange.TryStart())
        {
            return null;
        }

        for (var round = 0; round < MostRounds && exchange.TrySolve(out _); round++)
        {
            if (Largest(u, v, exchange.X, s) - exchange.T <= GapTolerance || !Cut(exchange, cuts, u, v, s))
            {
                return Found(exchange, cuts, line, present);
            }
        }

        return Largest(u, v, exchange.X, s) - exchange.T <= LastGap ? Found(exchange, cuts, line, present) : null;
    }

    private static Tube Found(Exchange exchange, List<(int Point, double C, double D)> cuts, Line3 line, double present)
    {
        var (e1, e2) = line.Direction.SquareDirections();
        var x = exchange.X;
        var direction = (line.Direction + (x[2] * e1) + (x[3] * e2)).Direction;
        var point = line.Point + (x[0] * e1) + (x[1] * e2);
        // Several cuts may belong to one point; together they say in which direction, and how strongly, it holds the tube open.
        var pulls = exchange
            .Basis.Select((row, i) => (cuts[row].Point, Pull: exchange.Multipliers[i] * new Point2(cuts[row].C, cuts[row].D)))
            .GroupBy(cut => cut.Point)
            .Select(group => (Point: group.Key, group.Aggregate(default(Point2), (sum, cut) => sum + cut.Pull).Norm))
            .Where(pull => pull.Norm > 1e-9)
            .OrderBy(pull => pull.Point)
            .ToArray();
        var sensitivity = 2 * Math.Sqrt(pulls.Sum(pull => pull.Norm * pull.Norm));
        return new Tube(
            new Line3(point, direction),
            exchange.T,
            present - exchange.T,
            Array.ConvertAll(pulls, pull => pull.Point),
            sensitivity
        );
    }

    private static (double[] U, double[] V, double[] S) Coordinates(Vector3[] points, Line3 line, Vector3 e1, Vector3 e2) =>
        (
            Array.ConvertAll(points, p => Vector3.Dot(p - line.Point, e1)),
            Array.ConvertAll(points, p => Vector3.Dot(p - line.Point, e2)),
            Array.ConvertAll(points, p => Vector3.Dot(p - line.Point, line.Direction))
        );

    private static double Largest(double[] u, double[] v, double[] x, double[] s)
    {
        var largest = 0.0;
        for (var i = 0; i < u.Length; i++)
        {
            var (a, b) = (u[i] - x[0] - (x[2] * s[i]), v[i] - x[1] - (x[3] * s[i]));
            largest = Math.Max(largest, Math.Sqrt((a * a) + (b * b)));
        }

        return largest;
    }

    // New cuts for the points farthest outside, each in the direction in which it lies now. False when none is outside by more than the tolerance.
    private static bool Cut(Exchange exchange, List<(int Point, double C, double D)> cuts, double[] u, double[] v, double[] s)
    {
        var x = (double[])exchange.X.Clone();
        var outside = Enumerable
            .Range(0, u.Length)
            .Select(i => (Index: i, A: u[i] - x[0] - (x[2] * s[i]), B: v[i] - x[1] - (x[3] * s[i])))
            .Select(p => (p.Index, p.A, p.B, Radius: Math.Sqrt((p.A * p.A) + (p.B * p.B))))
            .Where(p => p.Radius - exchange.T > GapTolerance)
            .OrderByDescending(p => p.Radius)
            .Take(CutsPerRound)
            .ToArray();
        foreach (var p in outside)
        {
            var (c, d) = (p.A / p.Radius, p.B / p.Radius);
            exchange.AddOneSided((c * u[p.Index]) + (d * v[p.Index]), [-c, -d, -c * s[p.Index], -d * s[p.Index]], 1);
            cuts.Add((p.Index, c, d));
        }

        return outside.Length > 0;
    }
}
