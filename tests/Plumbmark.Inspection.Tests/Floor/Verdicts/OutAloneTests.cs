using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Verdicts;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor.Verdicts;

/// <summary>A check that is out by itself, while the frame is not: the person who sees "out" in the table is told why.</summary>
public class OutAloneTests
{
    [Fact]
    public void ACheckOutByItself_AndNotAmongSoMany_IsExplained()
    {
        var found = 0;
        for (var i = 0; i < 16; i++)
        {
            var answer = FloorInspection.Of(Barely(i), new FloorOptions { NextReadings = 0 });
            var alone = answer.Checks.Where(c => c.Verdict == Verdict.Out).ToList();
            if (answer.Overall.Verdict == Verdict.Out || alone.Count == 0)
            {
                continue;
            }

            found++;
            Assert.Empty(CheckRule.OutAfterCounting(answer.Checks));
            var judged = answer.Checks.Count(c => c.Verdict is not null);
            Assert.Contains(
                answer.Overall.Why,
                w =>
                    w.Contains("by itself beyond the limit", StringComparison.Ordinal)
                    && w.Contains($"Of {judged} checks", StringComparison.Ordinal)
            );
            Assert.DoesNotContain(
                answer.Overall.Why,
                w =>
                    alone.Exists(c =>
                        w.StartsWith(CheckWords.Subject(c), StringComparison.Ordinal) && w.Contains("too close", StringComparison.Ordinal)
                    )
            );
        }

        Assert.InRange(found, 2, 16); // else the test looked at nothing
    }

    /// <summary>One mount a little beyond its limit.</summary>
    private static CarFile Barely(int seed)
    {
        var random = new Random(4000 + seed);
        var design = FrameDesign.Random(random);
        return SimulatedSurvey.Measure(new TrueFrame(design).Bend("B.L", 5.5, 0, 0), new SurveyStyle(), random);
    }
}
