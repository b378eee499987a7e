using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Floor.Verdicts;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor.Verdicts;

public class CheckGradientTests
{
    // JCGM 100:2008, 5.2: u² = c V cᵀ whichever axes the coordinates have. The check took it in the frame's own axes, the gradient in those of the fit.
    [Fact]
    public void InTheFitsOwnAxes_ACheckIsAsSureAsInTheFrames()
    {
        var random = new Random(31);
        var car = SimulatedSurvey.Measure(new TrueFrame(FrameDesign.Random(random)), new SurveyStyle { Book = true }, random);
        var solution = FrameSolution.Of(car);
        var evaluation = FrameEvaluation.Of(car, solution.Fit!, solution.Readings);
        Assert.InRange(Math.Abs(Math.Sin(2 * evaluation.Frame.TurnRadians)), 1e-4, 1); // else no axis was turned
        var kinds = new HashSet<string>(StringComparer.Ordinal);
        foreach (var check in evaluation.Checks.Where(c => c.Weights.Length == evaluation.Frame.Values.Length))
        {
            var gradient = CheckGradient.Of(evaluation.Frame, solution.Fit!, check.Weights);
            var u = Math.Sqrt(solution.Fit!.Covariance.Variance(gradient)) * evaluation.Spread;
            Assert.Equal(check.Check.UMetres, u, 1e-9 * check.Check.UMetres);
            kinds.Add(check.Check.Kind);
        }

        Assert.Superset(new HashSet<string> { "sideShift", "stagger", "heightDifference", "width", "twist", "sag", "deviation" }, kinds);
    }
}
