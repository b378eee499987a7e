using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Tests.Road.FaultyRoads;
using static Plumbmark.Inspection.Tests.Road.RoadKinematicsLaws;

namespace Plumbmark.Inspection.Tests.Road;

/// <summary>What the answer says, as text, as JSON, and headline and figures alike.</summary>
public class RoadWordsTests
{
    [Fact]
    public void WhatMakesAFigure_NamesFour_AndNothingThatRoundsToNothing()
    {
        var car = DemoCar.File();
        var (answer, display) = (RoadInspection.Of(car), RoadDisplay.Of(car));
        var shares = answer.Figures.Select(f => RoadText.Shares(f, display)).ToList();
        Assert.All(shares, s => Assert.DoesNotMatch(@" 0\.00 in| 0°00'", s));
        Assert.All(shares, s => Assert.True(s.Count(c => c == ',') <= 3, s));
        Assert.Contains(shares, s => s.EndsWith(" smaller", StringComparison.Ordinal));
    }

    [Fact]
    public void FiguresAndHeadline_SayOneThing()
    {
        // The shipped demo's left bump steer is out by itself; among all figures it may look so by chance.
        var car = DemoCar.File();
        var answer = RoadInspection.Of(car);
        var bump = Figure(answer, FigureKind.BumpSteer, Side.Left);
        Assert.True(bump.ProbabilityWithin < 0.05);
        Assert.Equal(Verdict.CannotTellYet, bump.Verdict);
        Assert.Equal(Verdict.CannotTellYet, answer.Verdict);
        Assert.Contains(answer.Why, w => w.Contains("By itself it would be out", StringComparison.Ordinal));
        foreach (var fault in Enum.GetValues<DemoRoad.Fault>())
        {
            var one = Of(fault);
            Assert.Equal(
                one.Figures.Any(f => f.Verdict == Verdict.Out) || one.Wheels.Any(w => w.Verdict == Verdict.Out),
                one.Verdict == Verdict.Out
            );
        }
    }

    [Fact]
    public void WhatDependsOnNothingMeasured_IsAsDrawn_AndHasNoPlusMinus()
    {
        var car = DemoCar.File();
        var text = RoadText.Of(RoadInspection.Of(car), RoadDisplay.Of(car));
        Assert.Contains("rear track: 50.00 in as drawn", text, StringComparison.Ordinal);
        Assert.DoesNotContain("±0.00", text, StringComparison.Ordinal);
        Assert.DoesNotContain("±0°00'", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_TellsTheRoadTheTurnsAndTheTravel()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.BentMount);
        var answer = RoadInspection.Of(car, MeasuredPlaces.None);
        var display = RoadDisplay.Of(car);
        var lines = RoadText.Of(answer, display).Split('\n');
        var ground = answer.Ground.Single(g => g.Side == Side.Right);
        Assert.Contains(
            lines,
            l =>
                l.StartsWith($"  right: scrub radius {display.SignedLength(ground.ScrubRadius)} (drawn", StringComparison.Ordinal)
                && l.Contains($"trail {display.SignedLength(ground.Trail)} (drawn", StringComparison.Ordinal)
                && l.Contains($"roll centre {display.SignedLength(ground.RollCentre)} (drawn", StringComparison.Ordinal)
        );
        var turn = answer.Turns.Single(t => Math.Abs(t.Inner - RoadKinematics.InnerTurnRadians) < 1e-9);
        Assert.Contains(
            $"  inner wheel 20°00': outer wheel {RoadDisplay.Size(turn.ToTheLeft!.OuterTurn)} to the left",
            string.Join('\n', lines),
            StringComparison.Ordinal
        );
        // Nine heights a side under a line of titles.
        var table = Array.FindIndex(lines, l => l.StartsWith("Right front wheel through its travel", StringComparison.Ordinal));
        var full = answer.FoundCurves[Side.Right][^1];
        Assert.Contains("roll centre", lines[table + 1], StringComparison.Ordinal);
        Assert.Contains(display.SignedLength(full.TravelMetres), lines[table + 10], StringComparison.Ordinal);
        Assert.Contains(RoadDisplay.Signed(full.ToeIn), lines[table + 10], StringComparison.Ordinal);
        Assert.Equal("", lines[table + 11]);
    }

    [Fact]
    public void JsonAndText_CarryVerdictFiguresAndCautions()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.BentMount);
        var answer = RoadInspection.Of(car, MeasuredPlaces.None, trials: 100);
        using var json = System.Text.Json.JsonDocument.Parse(RoadAnswerJson.Bytes(answer));
        var root = json.RootElement;
        Assert.Equal("out", root.GetProperty("overall").GetProperty("verdict").GetString());
        var castor = root.GetProperty("figures")
            .EnumerateArray()
            .Single(f => f.GetProperty("figure").GetString() == "castor" && f.GetProperty("side").GetString() == "R");
        Assert.Equal("degree", castor.GetProperty("unit").GetString());
        Assert.InRange(castor.GetProperty("value").GetDouble(), 2.7, 3.2);
        Assert.Equal(answer.Cautions.Count, root.GetProperty("cautions").GetArrayLength());
        var text = RoadText.Of(answer, RoadDisplay.Of(car));
        Assert.StartsWith("Out: ", text, StringComparison.Ordinal);
        Assert.Contains("competent person", text, StringComparison.Ordinal);
        Assert.DoesNotContain("roadworthy", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(" safe", text, StringComparison.OrdinalIgnoreCase);
    }
}
