using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Tests.Floor.Verdicts;

/// <summary>The frame's verdict from its checks and blind spots, each condition by itself.</summary>
public class OverallRuleTests
{
    private static readonly Check s_true = Of(0, mustBeTrue: true);
    private static readonly Check s_open = Of(3, mustBeTrue: true);
    private static readonly Check s_out = Of(9, mustBeTrue: true);
    private static readonly BlindSpot s_blind = new("twist", null, null, 3e-3, "Heights would show it.");

    [Fact]
    public void EveryNeededCheckTrueAndNothingBlind_IsTrue() => Assert.Equal(Verdict.True, OverallRule.VerdictOf([s_true, s_true], []));

    [Fact]
    public void OneBlindSpot_IsEnoughNotToSayTrue() => Assert.Equal(Verdict.CannotTellYet, OverallRule.VerdictOf([s_true], [s_blind]));

    [Fact]
    public void OneOpenCheckAmongTrueOnes_IsEnoughNotToSayTrue() =>
        Assert.Equal(Verdict.CannotTellYet, OverallRule.VerdictOf([s_true, s_open], []));

    [Fact]
    public void OneCheckOut_IsOut_WhateverIsBlindOrOpen()
    {
        Assert.Equal(Verdict.Out, OverallRule.VerdictOf([s_true, s_out, s_open], [s_blind]));
        Assert.Equal(Verdict.Out, OverallRule.VerdictOf([Of(9, mustBeTrue: false)], []));
    }

    [Fact]
    public void WhatNeedNotBeTrue_MayStayOpen()
    {
        Assert.Equal(Verdict.True, OverallRule.VerdictOf([s_true, Of(3, mustBeTrue: false)], []));
        Assert.Equal(Verdict.CannotTellYet, OverallRule.VerdictOf([Of(0, mustBeTrue: false)], []));
    }

    [Fact]
    public void NoCheckAtAll_IsNeverTrue() => Assert.Equal(Verdict.CannotTellYet, OverallRule.VerdictOf([], []));

    [Fact]
    public void ACheckWithoutALimit_HasNoVerdict_AndThenTheFrameHasNone()
    {
        var unlimited = s_true with { LimitMetres = null, Verdict = null, ProbabilityWithin = null };
        Assert.Equal(Verdict.CannotTellYet, OverallRule.VerdictOf([s_true, unlimited], []));
    }

    [Fact]
    public void Roles_SuspensionSpringsAndSteeringMustBeTrue_AndAllWhereNobodyTold()
    {
        FramePoint[] points =
        [
            Point("A", PointRole.Body),
            Point("B", PointRole.Suspension),
            Point("C", PointRole.Spring),
            Point("D", PointRole.Steering),
        ];
        Assert.False(Roles.MustBeTrue(points, 0));
        Assert.True(Roles.MustBeTrue(points, 1));
        Assert.True(Roles.MustBeTrue(points, 2));
        Assert.True(Roles.MustBeTrue(points, 3));
        Assert.True(Roles.MustBeTrue(points, 0, 1));
        Assert.True(Roles.MustBeTrue([Point("A", PointRole.Body), Point("E", PointRole.Engine)], 0));
    }

    private static FramePoint Point(string id, PointRole role) => new(id) { Role = role };

    // u = 1 mm and a limit of 3 mm: 0 is true, 3 is even odds, 9 is out.
    private static Check Of(double millimetres, bool mustBeTrue)
    {
        var (value, u, limit) = (millimetres * 1e-3, 1e-3, 3e-3);
        return new Check(
            "c",
            "stagger",
            value,
            u,
            limit,
            LimitSource.Own,
            CheckRule.ProbabilityWithin(value, u, limit),
            CheckRule.VerdictOf(value, u, limit),
            [],
            mustBeTrue
        );
    }
}
