using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.House.Tests.Docs;

/// <summary>Numbers that docs/method.md states are those that the program works with.</summary>
public class MethodNumbers
{
    [Fact]
    public void Method_StatesTheNumbersInForce()
    {
        string[] stated =
        [
            $"odds of {BlunderSearch.DoubtOdds:0.##} to one",
            $"odds of {BlunderSearch.NamingOdds:0.##} to one",
            $"|w| exceeds {Detection.CriticalValue:0.00}",
            $"δ₀ = {Detection.Delta0:0.0000} for α = {Detection.Significance:0.000}, β = {Detection.Miss:0.00}",
            $"δ₀(0.05, 0.20) = {BaardaReliability.Delta0(0.05, 0.20):0.00}",
            $"σ_drop = {CommonPractice.DropMetres * 1000:0.0} mm",
            $"σ_end = {CommonPractice.TapeEndMetres * 1000:0.0} mm",
            $"P ≥ {DecisionRule.Default.Probability:0.00}",
            $"P ≤ {1 - DecisionRule.Default.Probability:0.00}",
        ];
        var method = Markdown.Of("docs/method.md").Text;
        House.None(stated.Where(s => !method.Contains(s, StringComparison.Ordinal)));
    }
}
