using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>
/// The textbook's way, written once more and as plainly as can be, to hold the engine against: Gauss-Newton from the true places, derivatives by
/// differences, normal equations, Gauss-Jordan. No datum defect, no start search, no damping. Own computation.
/// </summary>
internal sealed class PlainAdjustment
{
    private readonly List<(string Point, Axis Axis)> _unknowns;
    private readonly IReadOnlyList<Observation> _readings;
    private readonly Dictionary<(string, Axis), double> _at;
    private readonly double[,] _cofactor;

    private PlainAdjustment(Network network, IReadOnlyDictionary<(string Point, Axis Axis), double> truth)
    {
        _readings = network.Observations;
        _at = new(truth);
        _unknowns =
        [
            .. from p in network.Points
            from axis in Enum.GetValues<Axis>()
            where p.Of(axis) is Coordinate.Free or Coordinate.Uncertain && _readings.Any(o => Touches(o, p.Id, axis))
            select (p.Id, axis),
        ];
        var priors = network
            .Points.SelectMany(p => Enum.GetValues<Axis>().Select(a => (p.Id, Axis: a, Known: p.Of(a) as Coordinate.Uncertain)))
            .Where(p => p.Known is not null && _unknowns.Contains((p.Id, p.Axis)))
            .Select(p => new CoordinatePrior($"{p.Id}{p.Axis}", p.Id, p.Axis, p.Known!.Metres, p.Known.SigmaMetres));
        List<Observation> equations = [.. _readings, .. priors];
        _cofactor = new double[0, 0];
        for (var round = 0; round < 15; round++)
        {
            var (normal, rhs) = Normal(equations);
            _cofactor = Inverse(normal);
            for (var i = 0; i < _unknowns.Count; i++)
            {
                _at[_unknowns[i]] -= Enumerable.Range(0, _unknowns.Count).Sum(j => _cofactor[i, j] * rhs[j]);
            }
        }

        WeightedSquares = equations.Sum(o => Math.Pow(Misclosure(o) / o.SigmaMetres, 2));
        Redundancy = equations.Count - _unknowns.Count;
    }

    public int Redundancy { get; }

    public double WeightedSquares { get; }

    public static PlainAdjustment Of(Network network, IReadOnlyDictionary<(string Point, Axis Axis), double> truth) => new(network, truth);

    public double Value(string point, Axis axis) => _at[(point, axis)];

    /// <summary>A-priori standard deviation.</summary>
    public double Sigma(string point, Axis axis)
    {
        var i = _unknowns.IndexOf((point, axis));
        return Math.Sqrt(_cofactor[i, i]);
    }

    public double Residual(string reading) => Misclosure(_readings.Single(o => o.Id == reading));

    private static bool Touches(Observation o, string point, Axis axis) =>
        o switch
        {
            PlanDistance r => axis is not Axis.Z && (r.From == point || r.To == point),
            DirectDistance r => r.From == point || r.To == point,
            Rise r => axis is Axis.Z && (r.From == point || r.To == point),
            Height r => axis is Axis.Z && r.Point == point,
            _ => throw new NotSupportedException(),
        };

    private double Misclosure(Observation o)
    {
        double D(string a, string b, Axis axis) => _at[(b, axis)] - _at[(a, axis)];
        return o switch
        {
            PlanDistance r => double.Hypot(D(r.From, r.To, Axis.X), D(r.From, r.To, Axis.Y)) - r.ValueMetres,
            DirectDistance r => double.Hypot(double.Hypot(D(r.From, r.To, Axis.X), D(r.From, r.To, Axis.Y)), D(r.From, r.To, Axis.Z))
                - r.ValueMetres,
            Rise r => D(r.From, r.To, Axis.Z) - r.ValueMetres,
            Height r => _at[(r.Point, Axis.Z)] - r.ValueMetres,
            CoordinatePrior r => _at[(r.Point, r.Axis)] - r.ValueMetres,
            _ => throw new NotSupportedException(),
        };
    }

    private (double[,] Normal, double[] Rhs) Normal(List<Observation> equations)
    {
        var n = _unknowns.Count;
        var (normal, rhs) = (new double[n, n], new double[n]);
        foreach (var o in equations)
        {
            var row = new double[n];
            for (var i = 0; i < n; i++)
            {
                var (here, step) = (_at[_unknowns[i]], 1e-3);
                _at[_unknowns[i]] = here + step;
                var above = Misclosure(o);
                _at[_unknowns[i]] = here - step;
                row[i] = (above - Misclosure(o)) / (2 * step) / o.SigmaMetres;
                _at[_unknowns[i]] = here;
            }

            var l = Misclosure(o) / o.SigmaMetres;
            for (var i = 0; i < n; i++)
            {
                rhs[i] += row[i] * l;
                for (var j = 0; j < n; j++)
                {
                    normal[i, j] += row[i] * row[j];
                }
            }
        }

        return (normal, rhs);
    }

    // Scaled to a unit diagonal first; Gauss-Jordan with row pivoting.
    private static double[,] Inverse(double[,] matrix)
    {
        var n = matrix.GetLength(0);
        var scale = Enumerable.Range(0, n).Select(i => 1 / Math.Sqrt(matrix[i, i])).ToArray();
        var work = new double[n, 2 * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                work[i, j] = matrix[i, j] * scale[i] * scale[j];
            }

            work[i, n + i] = 1;
        }

        for (var k = 0; k < n; k++)
        {
            var best = Enumerable.Range(k, n - k).MaxBy(i => Math.Abs(work[i, k]));
            for (var j = 0; j < 2 * n; j++)
            {
                (work[k, j], work[best, j]) = (work[best, j], work[k, j]);
            }

            var pivot = work[k, k];
            for (var j = 0; j < 2 * n; j++)
            {
                work[k, j] /= pivot;
            }

            for (var i = 0; i < n; i++)
            {
                var factor = i == k ? 0 : work[i, k];
                for (var j = 0; j < 2 * n; j++)
                {
                    work[i, j] -= factor * work[k, j];
                }
            }
        }

        var inverse = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                inverse[i, j] = work[i, n + j] * scale[i] * scale[j];
            }
        }

        return inverse;
    }
}
