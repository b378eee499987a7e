using Plumbmark.Inspection.Press;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Press;

/// <summary>Each rule that ends a job, by itself.</summary>
public class PressStopTests
{
    private const string Test = "\"found\": \"no\" }";

    [Theory]
    [InlineData("tick", StopReason.Tick)]
    [InlineData("flaking", StopReason.Flaking)]
    [InlineData("load-fell", StopReason.LoadFell)]
    [InlineData("wrong-plane", StopReason.WrongPlane)]
    public void ASign_StopsUntilTheCrackTest(string sign, StopReason reason)
    {
        var text = PressJobSamples.LowerArmAfter(2).With("\"set\": 0.02", $"\"set\": 0.02, \"signs\": [\"{sign}\"]");
        var stopped = Assert.IsType<PressState.Stopped>(PressFiles.Report(text).State);
        Assert.Equal(reason, Assert.Single(stopped.Reasons));
        Assert.Equal("b2", stopped.AfterBite);
        Assert.IsType<PressState.Stopped>(PressFiles.Report(text.With(Test, $"{Test}, {After("b1")}")).State); // too early
        Assert.IsType<PressState.Stopped>(PressFiles.Report(text.With(Test, $"{Test}, {After("b2").With("magnetic", "eye")}")).State); // not a test
        Assert.IsType<PressState.NextBite>(PressFiles.Report(text.With(Test, $"{Test}, {After("b2")}")).State);
    }

    [Fact]
    public void AWallThatBuckled_EndsTheJobWhateverTheCrackTestSays()
    {
        var text = PressJobSamples.LowerArmAfter(2).With("\"set\": 0.02", "\"set\": 0.02, \"signs\": [\"buckled\"]");
        Assert.IsNotType<PressState.NextBite>(PressFiles.Report(text).State);
        Assert.IsNotType<PressState.NextBite>(PressFiles.Report(text.With(Test, $"{Test}, {After("b2")}")).State);
    }

    [Fact]
    public void AGaugeThatFallsAtMoreTravel_StopsWithoutAnyoneSayingSo()
    {
        var text = PressJobSamples
            .LowerArmAfter(3)
            .With("\"set\": 0.02", "\"set\": 0.02, \"load\": 1.0")
            .With("\"set\": 0.08", "\"set\": 0.08, \"load\": 0.8");
        Assert.Equal([StopReason.LoadFell], Assert.IsType<PressState.Stopped>(PressFiles.Report(text).State).Reasons);
        Assert.IsType<PressState.NextBite>(PressFiles.Report(text.With("\"load\": 0.8", "\"load\": 0.97")).State);
    }

    [Fact]
    public void AShiftedSpringBack_Stops()
    {
        // Two bites say 0.14 in; then 0.22 sets 0.13: the spring-back has dropped to 0.09.
        var text = PressJobSamples.LowerArmAfter(3).With("\"set\": 0.08", "\"set\": 0.13");
        Assert.Contains(StopReason.SpringBackShifted, Assert.IsType<PressState.Stopped>(PressFiles.Report(text).State).Reasons);
    }

    [Fact]
    public void TooManyBites_EndTheJob()
    {
        var text = PressJobSamples.LowerArmAfter(2).With("\"bites\": 8", "\"bites\": 2");
        Assert.Equal([StopReason.TooManyBites], Assert.IsType<PressState.Over>(PressFiles.Report(text).State).Reasons);
    }

    [Fact]
    public void SpentStrain_EndsTheJob()
    {
        var text = PressJobSamples.LowerArmAfter(2).With("\"strain\": 0.05", "\"strain\": 0.002");
        var over = Assert.IsType<PressState.Over>(PressFiles.Report(text).State);
        Assert.Equal([StopReason.StrainSpent], over.Reasons);
    }

    [Fact]
    public void PastStraightBeyondTheLimit_IsOverAndNoTestClearsIt()
    {
        var text = PressJobSamples.LowerArmAfter(3).With("\"set\": 0.08", "\"set\": 0.21");
        var over = Assert.IsType<PressState.Over>(PressFiles.Report(text).State);
        Assert.Contains(StopReason.PastStraight, over.Reasons);
        Assert.IsType<PressState.Over>(PressFiles.Report(text.With(Test, $"{Test}, {After("b3")}")).State);
    }

    [Fact]
    public void ABiteTakenBack_NoLongerCounts()
    {
        var text = PressJobSamples.LowerArmAfter(3).With("\"set\": 0.08", "\"set\": 0.21, \"withdrawn\": \"read the wrong dial\"");
        var report = PressFiles.Report(text);
        Assert.Equal(2, report.Log!.Bites.Count);
        Assert.IsType<PressState.NextBite>(report.State);
    }

    [Fact]
    public void ReadAgainLater_TheLaterReadingCounts()
    {
        var text = PressJobSamples.LowerArmAfter(2).With("\"set\": 0.02", "\"left\": 0.16, \"leftLater\": 0.17");
        Assert.Equal(0.17 * 0.0254, PressFiles.Report(text).Log!.LeftMetres, 1e-9);
    }

    [Fact]
    public void WithoutALimit_NothingIsCalledStraight()
    {
        var report = PressFiles.Report(PressJobSamples.LowerArmAfter(4).With("\"straight\": \"1/32\", ", ""));
        Assert.Null(report.Log!.Straightness);
        Assert.IsType<PressState.NextBite>(report.State);
    }

    private static string After(string bite) =>
        $"{{ \"id\": \"x-{bite}\", \"method\": \"magnetic\", \"found\": \"no\", \"afterBite\": \"{bite}\" }}";
}
