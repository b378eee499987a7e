using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// Everything found minus drawn as independent standard normal numbers: deviation = found + root x normal. What was found has Cholesky's lower root of its joint covariance, what was not has its allowance.
/// </summary>
internal sealed class DeviationSpread
{
    // What is left of a variance by rounding when its row depends on the rows before it.
    private const double DependentShare = 1e-12;

    private readonly double[] _found;
    private readonly List<Entry>[] _columns;

    // A covariance of a car is mostly empty: only what is not zero is worth multiplying.
    private readonly record struct Entry(int Row, double Value);

    private DeviationSpread(double[] found, List<Entry>[] columns)
    {
        _found = found;
        _columns = columns;
    }

    /// <summary>The spread of some deviations.</summary>
    public static DeviationSpread Of(RoadDeviations deviations)
    {
        var root = LowerRoot(deviations.Covariance);
        var columns = new List<List<Entry>>();
        for (var j = 0; j < deviations.Amounts.Length; j++)
        {
            var found = Enumerable
                .Range(j, deviations.Amounts.Length - j)
                .Where(i => root[i, j] != 0)
                .Select(i => new Entry(i, root[i, j]));
            columns.Add([.. found]);
            if (deviations.Allowed[j] != 0)
            {
                columns.Add([new Entry(j, deviations.Allowed[j])]);
            }
        }

        return new(deviations.Amounts, [.. columns.Where(c => c.Count > 0)]);
    }

    /// <summary>How many independent numbers there are.</summary>
    public int Count => _columns.Length;

    /// <summary>Draws one car.</summary>
    public void Draw(RandomStream draw, double[] theta)
    {
        _found.CopyTo(theta, 0);
        foreach (var column in _columns)
        {
            var normal = draw.Normal();
            foreach (var (row, value) in column)
            {
                theta[row] += value * normal;
            }
        }
    }

    /// <summary>The car with one of the independent numbers off by so many standard uncertainties, all others at their best estimate.</summary>
    public void Step(int column, double standardUncertainties, double[] theta)
    {
        _found.CopyTo(theta, 0);
        foreach (var (row, value) in _columns[column])
        {
            theta[row] += value * standardUncertainties;
        }
    }

    // Cholesky's lower root of a covariance that may be singular: a row that depends on those before it, or is known exactly, gets a zero column.
    private static double[,] LowerRoot(double[,] covariance)
    {
        var n = covariance.GetLength(0);
        var root = new double[n, n];
        for (var j = 0; j < n; j++)
        {
            var left = covariance[j, j];
            for (var k = 0; k < j; k++)
            {
                left -= root[j, k] * root[j, k];
            }

            if (left <= DependentShare * covariance[j, j])
            {
                continue;
            }

            root[j, j] = Math.Sqrt(left);
            for (var i = j + 1; i < n; i++)
            {
                var sum = covariance[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= root[i, k] * root[j, k];
                }

                root[i, j] = sum / root[j, j];
            }
        }

        return root;
    }
}
