using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Tests.Bench.WrittenParts;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>When a bent part may be straightened, when it is replaced, and when an engineer is asked.</summary>
public class StraighteningAdviceTests
{
    [Fact]
    public void BentLever_IsNeverStraightened()
    {
        var answer = BenchInspection.Of(BenchFiles.Car(Lever("1.29", "5.44"), BenchFiles.Levers)).Parts[0];
        Assert.Equal(Verdict.Out, answer.Verdict);
        Assert.Equal(Disposition.Replace, answer.Disposition);
        Assert.True(answer.Variant!.NoneOrBent > 0.95);
        Assert.Contains(answer.Reasons, r => r.Contains("never straightened", StringComparison.Ordinal));
        Assert.Contains(answer.Reminders, r => r.Contains("never straighten", StringComparison.Ordinal));
    }

    [Fact]
    public void PressedArm_BentAndClean_MayBeStraightened()
    {
        var arm = BenchInspection.Of(BenchFiles.Car(Arm("pressed", ".19"))).Parts[0];
        Assert.Equal(Verdict.Out, arm.Verdict);
        Assert.Equal(Disposition.Straighten, arm.Disposition);
        Assert.Contains(arm.Reminders, r => r.StartsWith("Test for cracks before and after", StringComparison.Ordinal));
        Assert.Contains(arm.Reminders, r => r.StartsWith("Never heat", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("upright", "pressed", "")]
    [InlineData("stub-axle", "pressed", "")]
    [InlineData("steering-lever", "fabricated", "")]
    [InlineData("trunnion", "fabricated", "")]
    [InlineData("fulcrum-pin", "fabricated", "")]
    [InlineData("lower-wishbone", "cast", "")]
    [InlineData("upper-wishbone", "forged", "")]
    [InlineData("track-rod", "fabricated", "")]
    [InlineData("ball-joint", "pressed", "")]
    [InlineData("bracket", "cast", "")]
    [InlineData("own", "cast", "")]
    [InlineData("lower-wishbone", "pressed", "\"cracked\"")]
    [InlineData("lower-wishbone", "pressed", "\"kinked\"")]
    [InlineData("lower-wishbone", "pressed", "\"corroded\"")]
    [InlineData("lower-wishbone", "pressed", "\"pressed-before\"")]
    [InlineData("lower-wishbone", "pressed", "\"welded\"")]
    [InlineData("lower-wishbone", "pressed", "\"heated\"")]
    [InlineData("own", "pressed", "\"cracked\"")]
    [InlineData("lower-wishbone", "", "\"heated\"")]
    public void WhatMustNotBeStraightened_IsReplaced(string kind, string made, string condition)
    {
        var arm = BenchInspection.Of(BenchFiles.Car(Arm(made, ".19", kind, condition))).Parts[0];
        Assert.Equal(Disposition.Replace, arm.Disposition);
    }

    [Theory]
    [InlineData("lower-wishbone", "", "It is not told how it was made")]
    [InlineData("bracket", "", "It is not told how it was made")]
    [InlineData("own", "pressed", "Nobody has told what this part does")]
    [InlineData("own", "", "Nobody has told what this part does")]
    public void BentPart_OfWhichAFactIsMissing_IsNotThrownAway(string kind, string made, string asks)
    {
        var answer = BenchInspection.Of(BenchFiles.Car(Arm(made, ".19", kind)));
        var arm = answer.Parts[0];
        Assert.Equal((Verdict.Out, Disposition.MeasureAgain), (arm.Verdict, arm.Disposition));
        Assert.StartsWith(asks, Assert.Single(arm.MeasureNext), StringComparison.Ordinal);
        // A part that is bent beyond doubt leaves nobody in the dark about the whole.
        Assert.Equal(Verdict.Out, answer.Verdict);
        // Too far for a press at home whatever it is made of.
        Assert.Equal(Disposition.Replace, BenchInspection.Of(BenchFiles.Car(Arm(made, "1.2", kind))).Parts[0].Disposition);
    }

    [Fact]
    public void Straighten_IsNeverAdvised_ForAnyForbiddenPart()
    {
        // Every kind, make and condition, bent or not: where the rule forbids it, the word must not appear.
        foreach (var kind in Enum.GetValues<PartKind>())
        {
            foreach (var make in Enum.GetValues<PartMake>().Cast<PartMake?>().Append(null))
            {
                foreach (var condition in Enum.GetValues<PartCondition>().Cast<PartCondition?>().Append(null))
                {
                    var part = BenchFiles.Car(Arm("pressed", ".19")).Parts.Items[0] with
                    {
                        Kind = kind,
                        Make = make,
                        Conditions = condition is { } c ? [c] : [],
                    };
                    var car = BenchFiles.Car(Arm("pressed", ".19"));
                    var answer = BenchInspection.Of(car with { Parts = new PartsSection([part], []) }).Parts[0];
                    var mayBe =
                        kind is PartKind.LowerWishbone or PartKind.UpperWishbone or PartKind.SpringSeat or PartKind.Bracket
                        && make is PartMake.Pressed or PartMake.Fabricated
                        && condition is null;
                    Assert.True(mayBe || answer.Disposition != Disposition.Straighten, $"{kind} {make} {condition}");
                }
            }
        }
    }

    [Fact]
    public void BentTooFar_IsForAnEngineer()
    {
        var arm = BenchInspection.Of(BenchFiles.Car(Arm("pressed", "1.2"))).Parts[0];
        Assert.Equal(Disposition.Replace, arm.Disposition);
        Assert.Contains(arm.Reasons, r => r.Contains("engineer", StringComparison.Ordinal));
    }
}
