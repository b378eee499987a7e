namespace Plumbmark.Inspection.Road;

/// <summary>How far the mean of a figure, over everything that is uncertain, lies from its value at the best estimates, because the road from place to angle is bent.</summary>
/// <remarks>
/// The second-order term of the mean, ½ Σ ∂²f/∂x² u² over independent numbers x (JCGM 100:2008, 4.1.4 note and 5.1.2 note; linear propagation leaves it out), taken from one standard uncertainty either way:
/// b = ½ Σ (f(x + u) + f(x - u) - 2 f(x)).
/// </remarks>
internal static class FigureBow
{
    /// <summary>The bow of each formula, in the unit of its figure; zero where it cannot be told.</summary>
    public static double[] Of(RoadModel model, IReadOnlyList<FigureFormula> formulas, DeviationSpread spread)
    {
        var theta = new double[RoadParameters.Count];
        var still = Figures(model, formulas, model.Deviations.Amounts);
        var bow = new double[formulas.Count];
        for (var column = 0; column < spread.Count; column++)
        {
            spread.Step(column, 1, theta);
            var more = Figures(model, formulas, theta);
            spread.Step(column, -1, theta);
            var less = Figures(model, formulas, theta);
            for (var i = 0; i < bow.Length; i++)
            {
                bow[i] += 0.5 * (more[i] + less[i] - (2 * still[i]));
            }
        }

        return [.. bow.Select(b => double.IsFinite(b) ? b : 0)];
    }

    private static double[] Figures(RoadModel model, IReadOnlyList<FigureFormula> formulas, double[] theta)
    {
        var basics = model.Kinematics.Basics(theta);
        return [.. formulas.Select(f => f.Of(basics))];
    }
}
