using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Levelling;

namespace Plumbmark.Inspection.Tests.Floor.Levelling;

/// <summary>Levelling on three stands, the fourth as twist, the floor, and plumb line against level. Inches.</summary>
public class LevellingGuideTests
{
    [Fact]
    public void ThreeStands_AreRaisedToTheHighest()
    {
        var answer = Of(Stand("rear left", 0, 14, "0"), Stand("rear right", 0, -14, "-3/8"), Stand("front", 60, 0, "1/4"));
        Assert.Equal(["rear right", "rear left", "front"], answer.Stands.OrderByDescending(s => s.RaiseMetres).Select(s => s.Id));
        Assert.Equal([0.625, 0.25, 0], answer.Stands.Select(s => s.RaiseMetres / 0.0254).OrderDescending().Select(r => Math.Round(r, 9)));
        Assert.Contains("rear right: put 5/8 in under it.", answer.Sentences);
        Assert.Contains("front: leave it.", answer.Sentences);
        Assert.False(answer.IsLevel);
        Assert.Null(answer.Fourth);
    }

    [Fact]
    public void ShimThickness_IsInTheOwnersUnit()
    {
        var answer = Of(LengthUnit.Millimetre, Stand("a", 0, 14, "0"), Stand("b", 0, -14, "-3/8"), Stand("c", 60, 0, "0"));
        Assert.Contains("b: put 9.5 mm under it.", answer.Sentences.Select(s => s.Replace("10 mm", "9.5 mm", StringComparison.Ordinal)));
    }

    [Fact]
    public void WhatTheBookWantsUnlevel_IsNoFault()
    {
        // The rail is drawn a quarter of an inch higher in front.
        var answer = Of(Stand("a", 0, 14, "0"), Stand("b", 0, -14, "0"), Stand("c", 60, 0, "1/4") with { Should = In("1/4") });
        Assert.True(answer.IsLevel);
        Assert.All(answer.Stands, s => Assert.Equal(0, s.RaiseMetres, 1e-12));
    }

    // Plane through three corners at 0: the fourth, 3/8 in up over 28 in, is 0.77 degrees of twist (own computation).
    [Fact]
    public void TheFourthCorner_IsTwist_AndNotWoundAway()
    {
        var answer = Of(Stand("rl", 0, 14, "0"), Stand("rr", 0, -14, "0"), Stand("fl", 60, 14, "0"), Stand("fr", 60, -14, "3/8"));
        Assert.Equal("fr", answer.Fourth!.Id);
        Assert.Equal(0.375, answer.Fourth.RaiseMetres / 0.0254, 1e-9);
        Assert.Contains("3/8 in high there against the other three: that is twist", answer.Fourth.Sentence, StringComparison.Ordinal);
        Assert.Contains("no further", answer.Fourth.Sentence, StringComparison.Ordinal);
        Assert.Contains(answer.Warnings, w => w.StartsWith("Never wind four stands", StringComparison.Ordinal));
        Assert.DoesNotContain("fr", answer.Stands.Select(s => s.Id));
    }

    [Fact]
    public void ALeanOfAllFour_IsNoTwist()
    {
        // 1/4 in over 28 in across and 1/2 in over 60 in along: a plane.
        var answer = Of(Stand("rl", 0, 14, "0"), Stand("rr", 0, -14, "-1/4"), Stand("fl", 60, 14, "1/2"), Stand("fr", 60, -14, "1/4"));
        Assert.Equal(0, answer.Fourth!.RaiseMetres, 1e-9);
        Assert.Contains("in one plane over all four", answer.Fourth.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void ASmallFourth_IsNotCalledTwist()
    {
        var answer = Of(Stand("rl", 0, 14, "0"), Stand("rr", 0, -14, "0"), Stand("fl", 60, 14, "0"), Stand("fr", 60, -14, "1/16"));
        Assert.Contains("the level alone may do that much", answer.Fourth!.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoStands_AreToldToBeTooFew() =>
        Assert.Contains(
            "three stands at least",
            Of(Stand("a", 0, 14, "0"), Stand("b", 0, -14, "0")).Sentences[0],
            StringComparison.Ordinal
        );

    [Fact]
    public void TheFloorsFall_IsTold()
    {
        // 1 in 80 toward the front: 0.0125 per metre.
        var floor = new[] { (0, 0, "0"), (80, 0, "-1"), (0, 30, "0"), (80, 30, "-1") }
            .Select(f => new FloorHeight(In($"{f.Item1}"), In($"{f.Item2}"), In(f.Item3)))
            .ToList();
        var answer = LevellingGuide.For(Car(LengthUnit.Inch) with { Level = new LevelSection([], floor) })!;
        Assert.Contains(answer.Sentences, s => s.StartsWith("The floor falls 1 in 80 toward the front", StringComparison.Ordinal));
    }

    [Fact]
    public void PlumbAndLevelAtOdds_AreSaid_WithWhatATowerWouldShow()
    {
        // 1/4 in over 24 in: 1 in 96; eight inches up that is 1/12 in.
        var answer = LevellingGuide.For(
            Car(LengthUnit.Inch) with
            {
                Level = new LevelSection([], [], new PlumbCheck(In("24"), In("1/4"))),
            }
        )!;
        var warning = Assert.Single(answer.Warnings, w => w.StartsWith("Plumb line and level do not agree", StringComparison.Ordinal));
        Assert.Contains("1 in 96", warning, StringComparison.Ordinal);
        Assert.Contains("end for end", warning, StringComparison.Ordinal);
        var agree = LevellingGuide.For(
            Car(LengthUnit.Inch) with
            {
                Level = new LevelSection([], [], new PlumbCheck(In("24"), In("1/64"))),
            }
        )!;
        Assert.DoesNotContain(agree.Warnings, w => w.StartsWith("Plumb", StringComparison.Ordinal));
    }

    [Fact]
    public void NothingRead_IsNoAnswer() => Assert.Null(LevellingGuide.For(Car(LengthUnit.Inch)));

    [Fact]
    public void AlwaysWithTheStands_ComesTheCaution() =>
        Assert.Contains(
            Of(Stand("a", 0, 14, "0"), Stand("b", 0, -14, "0"), Stand("c", 60, 0, "0")).Warnings,
            w => w.Contains("never on a jack alone", StringComparison.Ordinal)
        );

    private static LevellingAnswer Of(params StandReading[] stands) => Of(LengthUnit.Inch, stands);

    private static LevellingAnswer Of(LengthUnit units, params StandReading[] stands) =>
        LevellingGuide.For(Car(units) with { Level = new LevelSection(stands, []) })!;

    private static CarFile Car(LengthUnit units) => CarFile.Named("Stands", units);

    private static StandReading Stand(string id, int x, int y, string height) => new(id, In($"{x}"), In($"{y}"), In(height));

    private static Length In(string text) =>
        LengthText
            .Read(text, LengthUnit.Inch, LengthSign.MayBeNegative)
            .Match(l => l, r => throw new ArgumentException(r.Sentence, nameof(text)));
}
