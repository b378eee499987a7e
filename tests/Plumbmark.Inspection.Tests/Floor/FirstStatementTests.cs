using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Tests.Floor;

/// <summary>Five readings are enough for a first useful sentence, and for no verdict.</summary>
public class FirstStatementTests
{
    [Theory]
    [InlineData(16, "1/8")]
    [InlineData(32, "1/8")]
    public void FiveReadings_SayHowWellTheSidesAgree_AndNoMore(int divisions, string sure)
    {
        var answer = FloorInspection.Of(Five(divisions, "60 1/16"));
        Assert.Equal(Verdict.CannotTellYet, answer.Overall.Verdict);

        // Four drops of 0.5 mm; two readings, each with two ends of 0.5 mm and its division; twice that, in whole divisions upward.
        var u = Math.Sqrt((4 * 0.25) + (2 * (0.5 + (25.4 / divisions * 25.4 / divisions / 12))));
        var expected = Math.Ceiling(2 * u / (25.4 / divisions)) / divisions;
        Assert.Equal(0.125, expected);
        Assert.Contains(
            $"B to E agrees side to side within 1/16 in, sure to ±{sure} in.",
            answer.Overall.Why.Concat(answer.Comparisons.Select(c => c.Sentence))
        );
    }

    [Fact]
    public void FiveReadings_WithASideHalfAnInchLonger_SayWhichSide()
    {
        // Half an inch is eight times what the two sides are sure to.
        Assert.Contains(
            "B to E is 1/2 in longer on the right, sure to ±1/8 in.",
            FloorInspection.Of(Five(16, "60 1/2")).Comparisons.Select(c => c.Sentence)
        );
    }

    private static CarFile Five(int divisions, string right)
    {
        var division = Length.FromFraction(0, 1, divisions, LengthUnit.Inch);
        var limit = Length.FromFraction(0, 1, 8, LengthUnit.Inch);
        return CarFile.Named("First evening", LengthUnit.Inch) with
        {
            Tools = [new Tool("tape", ToolKind.Tape, TapeClass.II, division)],
            Frame = new Frame(
                [
                    .. FrameSkeleton.Pair("B", "Front", PointRole.Suspension, In("60"), In("14")),
                    .. FrameSkeleton.Pair("E", "Rear", PointRole.Spring, In("0"), In("15")),
                ],
                new Limits(limit, limit, limit)
            ),
            Readings =
            [
                Plan("r1", "B.L", "B.R", "28"),
                Plan("r2", "B.L", "E.L", "60"),
                Plan("r3", "B.R", "E.R", right),
                Plan("r4", "B.L", "E.R", "66 5/8"),
                Plan("r5", "B.R", "E.L", "66 5/8"),
            ],
        };
    }

    private static Reading.Plan Plan(string id, string from, string to, string text) => new(id, from, to, In(text)) { Tool = "tape" };

    private static Length In(string text) =>
        LengthText.Read(text, LengthUnit.Inch).Match(l => l, r => throw new ArgumentException(r.Sentence, nameof(text)));
}
