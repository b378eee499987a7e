namespace Plumbmark.Engine.LeastSquares;

/// <summary>Linear least squares with every unknown between two bounds, for a handful of unknowns: what a few adjusters can do toward a few angles.</summary>
/// <remarks>
/// Exact: each unknown is free, at its lower bound or at its upper one, so all 3^n choices are tried and the best feasible one is the answer. The problem is convex, so nothing better exists between
/// them. Meant for n of at most <see cref="MostUnknowns"/>; an active-set method would be faster and has more ways to go wrong.
/// Plain numbers: the caller scales rows and columns to its own units.
/// </remarks>
public static class BoundedLeastSquares
{
    /// <summary>3^7 small solutions take about a millisecond.</summary>
    public const int MostUnknowns = 7;

    /// <summary>The x between the bounds that makes |A x - b| smallest; columns that tell nothing keep the bound or zero nearest to zero.</summary>
    /// <param name="matrix">A, row-major, rows x columns.</param>
    /// <param name="rows">m.</param>
    /// <param name="columns">n, at most <see cref="MostUnknowns"/>.</param>
    /// <param name="rightSide">b.</param>
    /// <param name="lower">Lower bounds.</param>
    /// <param name="upper">Upper bounds, none below its lower one.</param>
    public static double[] Solve(
        ReadOnlySpan<double> matrix,
        int rows,
        int columns,
        ReadOnlySpan<double> rightSide,
        ReadOnlySpan<double> lower,
        ReadOnlySpan<double> upper
    )
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(columns, MostUnknowns);
        ArgumentOutOfRangeException.ThrowIfNegative(columns);
        ArgumentOutOfRangeException.ThrowIfNotEqual(matrix.Length, rows * columns, nameof(matrix));
        var best = Array.Empty<double>();
        var leastSquare = double.PositiveInfinity;
        var choices = (int)Math.Round(Math.Pow(3, columns));
        for (var choice = 0; choice < choices; choice++)
        {
            var x = Try(choice, matrix, rows, columns, rightSide, lower, upper);
            var square = x is null ? double.PositiveInfinity : Square(matrix, rows, columns, rightSide, x);
            if (square < leastSquare)
            {
                (best, leastSquare) = (x!, square);
            }
        }

        return best;
    }

    // One choice of who is free (digit 0), at its lower bound (1) or at its upper bound (2); null when a free one leaves its bounds.
    private static double[]? Try(
        int choice,
        ReadOnlySpan<double> matrix,
        int rows,
        int columns,
        ReadOnlySpan<double> rightSide,
        ReadOnlySpan<double> lower,
        ReadOnlySpan<double> upper
    )
    {
        var x = new double[columns];
        var free = new List<int>(columns);
        var (b, digits) = (rightSide.ToArray(), choice);
        for (var j = 0; j < columns; j++, digits /= 3)
        {
            if (digits % 3 == 0)
            {
                free.Add(j);
                continue;
            }

            x[j] = digits % 3 == 1 ? lower[j] : upper[j];
            for (var i = 0; i < rows; i++)
            {
                b[i] -= matrix[(i * columns) + j] * x[j];
            }
        }

        var reduced = new double[rows * free.Count];
        for (var i = 0; i < rows; i++)
        {
            for (var k = 0; k < free.Count; k++)
            {
                reduced[(i * free.Count) + k] = matrix[(i * columns) + free[k]];
            }
        }

        var solved = PivotedQr.Of(reduced, rows, free.Count).Solve(b);
        for (var k = 0; k < free.Count; k++)
        {
            var j = free[k];
            if (!(solved[k] >= lower[j] && solved[k] <= upper[j]))
            {
                return null;
            }

            x[j] = solved[k];
        }

        return x;
    }

    private static double Square(ReadOnlySpan<double> matrix, int rows, int columns, ReadOnlySpan<double> b, double[] x)
    {
        var sum = 0.0;
        for (var i = 0; i < rows; i++)
        {
            var r = Dense.Dot(matrix.Slice(i * columns, columns), x) - b[i];
            sum += r * r;
        }

        return sum;
    }
}
