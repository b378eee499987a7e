using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Inspection.Road;

/// <summary>Checks the figures' means and linear uncertainties by Monte Carlo (JCGM 101:2008, clauses 7 and 8).</summary>
internal static class RoadTrial
{
    private const double Coverage = 0.95;
    private const int SignificantDigits = 1;

    /// <summary>Tries the figures of a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="trials">How many cars are drawn; a hundred thousand settle one digit of u.</param>
    /// <param name="withTurns">Whether the outer wheel's turns are tried too: each trial then searches the steering for two turns, which takes ten times as long.</param>
    /// <param name="seed">Names the random numbers.</param>
    public static IReadOnlyList<TrialCheck> Of(RoadModel model, IReadOnlyList<RoadFigure> figures, int trials, bool withTurns, ulong seed)
    {
        var tried = figures.Where(f => (withTurns || f.Kind != FigureKind.ToeOutOnTurns) && !f.IsAsDrawn && f.U > 0).ToList();
        if (tried.Count == 0)
        {
            return [];
        }

        var formulas = tried.Select(f => FigureFormula.All.First(formula => formula.Kind == f.Kind && formula.Side == f.Side)).ToList();
        var spread = DeviationSpread.Of(model.Deviations);
        var (theta, basics) = (new double[RoadParameters.Count], new double[RoadKinematics.BasicCount]);
        var outcomes = MonteCarlo.Propagate(
            (draw, results) =>
            {
                spread.Draw(draw, theta);
                model.Kinematics.AddBasics(theta, withTurns, basics);
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
        var linear = new CoverageInterval(figure.Mean - half, figure.Mean + half);
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
}
