using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Tests.Bench.WrittenParts;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>A part that measures true is kept, unless its history or what was seen on it speaks against it.</summary>
public class WorthKeepingTests
{
    [Fact]
    public void StraightArm_IsKept_AndACrackNever()
    {
        Assert.Equal(Disposition.Keep, BenchInspection.Of(WholeArm()).Parts[0].Disposition);
        var cracked = BenchInspection.Of(WholeArm("\"cracked\"")).Parts[0];
        Assert.Equal(Disposition.Replace, cracked.Disposition);
        Assert.Equal(Verdict.True, cracked.Verdict);
    }

    [Fact]
    public void PressedBeforeAndTrue_IsKeptUnderWatch()
    {
        var arm = BenchInspection.Of(WholeArm("\"pressed-before\"")).Parts[0];
        Assert.Equal(Disposition.Keep, arm.Disposition);
        Assert.Contains(arm.Reasons, r => r.Contains("every year", StringComparison.Ordinal));
        Assert.Contains(arm.Reminders, r => r.Contains("tested for cracks", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("heated", "It was heated")]
    [InlineData("welded", "It was welded")]
    public void HeatedOrWeldedAndTrue_IsNotKeptWithoutAWord(string condition, string word)
    {
        var arm = BenchInspection.Of(WholeArm($"\"{condition}\"")).Parts[0];
        Assert.Equal(Disposition.Keep, arm.Disposition);
        Assert.Contains(
            arm.Reasons,
            r => r.StartsWith(word, StringComparison.Ordinal) && r.Contains("competent person", StringComparison.Ordinal)
        );
        Assert.Contains(arm.Reminders, r => r.Contains("tested for cracks", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("upright")]
    [InlineData("steering-lever")]
    [InlineData("track-rod")]
    [InlineData("ball-joint")]
    public void HeatedOrWeldedSteeringPart_IsReplacedThoughItMeasuresTrue(string kind)
    {
        var part = BenchInspection.Of(BenchFiles.Car(Arm("forged", ".003", kind, "\"heated\""))).Parts[0];
        Assert.Equal(Disposition.Replace, part.Disposition);
        Assert.Contains(part.Reasons, r => r.Contains("not used after that", StringComparison.Ordinal));
    }

    [Fact]
    public void LookedOverByEye_IsNoCrackTest()
    {
        var arm = BenchFiles.Car(Arm("forged", ".003"));
        var byEye = arm with { Parts = new PartsSection([arm.Parts.Items[0] with { ClearBy = CrackMethod.Eye }], []) };
        Assert.Contains(BenchInspection.Of(byEye).Parts[0].Reminders, r => r.Contains("tested for cracks", StringComparison.Ordinal));
        var byDye = arm with { Parts = new PartsSection([arm.Parts.Items[0] with { ClearBy = CrackMethod.Dye }], []) };
        Assert.Contains(BenchInspection.Of(byDye).Parts[0].Reminders, r => r.Contains("does not prove", StringComparison.Ordinal));
    }
}
