using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Inspection.Road;

/// <summary>Checks the figures' linear uncertainties by Monte Carlo (JCGM 101:2008, clauses 7 and 8). The outer wheel's turn is left out: it takes ten times as long and is as smooth as the rest.</summary>
internal static class RoadTrial
{
    private const double Coverage = 0.95;
    private const int SignificantDigits = 1;

    // Surer than a hundredth of a millimetre, or two seconds of arc, nothing in a workshop needs trying.
    private const double LeastU = 1e-5;

    // What is left of a variance by rounding when its row depends on the rows before it.
    private const double DependentShare = 1e-12;

    /// <summary>Tries the figures of a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="trials">How many cars are drawn; a hundred thousand settle one digit of u.</param>
    /// <param name="seed">Names the random numbers.</param>
    public static IReadOnlyList<TrialCheck> Of(RoadModel model, IReadOnlyList<RoadFigure> figures, int trials, ulong seed)
    {
        var tried = figures.Where(f => f.Kind != FigureKind.ToeOutOnTurns && f.U > LeastU).ToList();
        if (tried.Count == 0)
        {
            return [];
        }

        var formulas = tried.Select(f => FigureFormula.All.First(formula => formula.Kind == f.Kind && formula.Side == f.Side)).ToList();
        var root = Entries(LowerRoot(model.Deviations.Covariance));
        var (theta, normal) = (new double[RoadParameters.Count], new double[RoadParameters.Count]);
        var outcomes = MonteCarlo.Propagate(
            (draw, results) =>
            {
                Draw(draw, model.Deviations, root, normal, theta);
                var basics = model.Kinematics.Basics(theta, withTurns: false);
                for (var i = 0; i < formulas.Count; i++)
                {
                    results[i] = formulas[i].Of(basics);
                }
            },
            tried.Count,
            trials,
            seed
        );
        return [.. tried.Zip(outcomes, Compare)];
    }

    private static TrialCheck Compare(RoadFigure figure, MonteCarloOutcome outcome)
    {
        var half = Normal.Quantile(0.5 * (1 + Coverage)) * figure.U;
        var linear = new CoverageInterval(figure.Value - half, figure.Value + half);
        var tolerance = MonteCarloAgreement.Tolerance(figure.U, SignificantDigits);
        return outcome.Match(
            tried =>
            {
                var interval = tried.SymmetricInterval(Coverage);
                var agrees = MonteCarloAgreement.Holds(linear, interval, tolerance);
                return new TrialCheck(figure.Kind, figure.Side, linear.Low, linear.High, interval.Low, interval.High, tolerance, agrees, 0);
            },
            undefined => new TrialCheck(
                figure.Kind,
                figure.Side,
                linear.Low,
                linear.High,
                double.NaN,
                double.NaN,
                tolerance,
                false,
                undefined.Count
            )
        );
    }

    private static void Draw(RandomStream draw, RoadDeviations deviations, List<Entry> root, double[] normal, double[] theta)
    {
        for (var i = 0; i < theta.Length; i++)
        {
            // What was found has no allowance and what has one was not found, so that one normal number serves both.
            normal[i] = draw.Normal();
            theta[i] = deviations.Amounts[i] + (deviations.Allowed[i] * normal[i]);
        }

        foreach (var (row, column, value) in root)
        {
            theta[row] += value * normal[column];
        }
    }

    // A covariance of a car is mostly empty: only what is not zero is worth multiplying.
    private readonly record struct Entry(int Row, int Column, double Value);

    private static List<Entry> Entries(double[,] root) =>
        [
            .. from i in Enumerable.Range(0, root.GetLength(0))
            from j in Enumerable.Range(0, i + 1)
            where root[i, j] != 0
            select new Entry(i, j, root[i, j]),
        ];

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
