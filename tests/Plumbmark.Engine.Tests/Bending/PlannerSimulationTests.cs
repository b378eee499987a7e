using Plumbmark.Simulations;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>A few of the thousand simulated jobs of bench/results/press.txt: a metal with memory, rubbing supports, misread dials.</summary>
public class PlannerSimulationTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Planner_StraightensWithoutGoingPastStraight(bool readAtPart)
    {
        for (var number = 0; number < 6; number++)
        {
            var planner = PressSimulation.Job(number, readAtPart)[0];
            Assert.True(
                planner.IsGood,
                $"job {number}: {planner.TrueLeft * 1e3:F2} mm left, {planner.MostPast * 1e3:F2} mm past straight at most"
            );
            Assert.InRange(planner.Bites, 1, 8);
        }
    }
}
