using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Tests.Floor.Verdicts;

/// <summary>What a doubt does to the verdict: true must hold whatever is believed, out only where no way says true.</summary>
public class OverallCaseTests
{
    private static readonly CarFile s_car = DemoCar.File();

    [Theory]
    [InlineData(Verdict.True, "", Verdict.True)]
    [InlineData(Verdict.True, "True", Verdict.True)]
    [InlineData(Verdict.True, "True Out", Verdict.CannotTellYet)]
    [InlineData(Verdict.True, "CannotTellYet", Verdict.CannotTellYet)]
    [InlineData(Verdict.Out, "", Verdict.Out)]
    [InlineData(Verdict.Out, "Out CannotTellYet", Verdict.Out)]
    [InlineData(Verdict.Out, "Out True", Verdict.CannotTellYet)]
    [InlineData(Verdict.CannotTellYet, "True", Verdict.CannotTellYet)]
    [InlineData(Verdict.CannotTellYet, "Out", Verdict.CannotTellYet)]
    public void TheVerdict_HoldsAgainstTheDoubts(Verdict believed, string others, Verdict expected)
    {
        var evaluation = Evaluated(believed);
        Assert.Equal(believed, evaluation.Verdict);
        Assert.Equal(expected, Case(evaluation, others).Verdict);
    }

    [Fact]
    public void NothingPutTogether_CannotTell()
    {
        var none = Case(null, "True");
        Assert.Equal(Verdict.CannotTellYet, none.Verdict);
        Assert.Empty(none.Checks);
    }

    [Fact]
    public void ALimit_IsKnownWhenAnyOfThemIs()
    {
        var some = s_car.Frame.Limits!.Mirror ?? s_car.Frame.Limits.Height ?? s_car.Frame.Limits.Point;
        Assert.False(Of(null).HasLimit);
        Assert.False(Of(new Limits()).HasLimit);
        Assert.True(Of(new Limits { Mirror = some }).HasLimit);
        Assert.True(Of(new Limits { Height = some }).HasLimit);
        Assert.True(Of(new Limits { Point = some }).HasLimit);
        static OverallCase Of(Limits? limits) => new(s_car with { Frame = s_car.Frame with { Limits = limits } }, null, [], [], [], [], []);
    }

    private static OverallCase Case(FrameEvaluation? evaluation, string others) =>
        new(s_car, evaluation, [], [.. others.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Enum.Parse<Verdict>)], [], [], []);

    /// <summary>One and the same frame with one check, which alone decides.</summary>
    private static FrameEvaluation Evaluated(Verdict verdict)
    {
        var solution = FrameSolution.Of(s_car);
        var check = new Check("c", "stagger", 0, 1e-3, 3e-3, LimitSource.Own, 0.5, verdict, [], MustBeTrue: true)
        {
            // What is out must be so after counting, too.
            ValueMetres = verdict == Verdict.Out ? 20e-3 : 0,
        };
        return FrameEvaluation.Of(s_car, solution.Fit!, solution.Readings) with { Checks = [new FrameCheck(check, [])], Sight = [] };
    }
}
