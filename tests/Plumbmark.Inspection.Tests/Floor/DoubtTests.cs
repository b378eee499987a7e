using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Adjusting;

namespace Plumbmark.Inspection.Tests.Floor;

/// <summary>The invented demo car has one length misread by an inch and one bent horn: both must be named, and told apart.</summary>
public class DoubtTests
{
    private static readonly CarFile s_demo = DemoCar.File();

    [Fact]
    public void Of_ALengthMisreadByAnInch_DoubtsThatReadingAndAsksForItAgainFirst()
    {
        var answer = FloorInspection.Of(s_demo);
        var suspect = Assert.Single(answer.Suspects);
        Assert.Equal("inch", suspect.Kind);
        Assert.Equal(0.0254, Math.Abs(suspect.SizeMetres!.Value), 0.0001);
        Assert.Contains("1 in mark", suspect.Sentence, StringComparison.Ordinal);
        Assert.Equal($"doubt:{suspect.Reading}", Assert.Single(answer.Next[0].Settles));
        Assert.NotEqual(Verdict.True, answer.Overall.Verdict);
    }

    [Fact]
    public void Of_TheDoubtedReadingTakenAgain_DoubtsNothingAndStillFindsTheBentHorn()
    {
        var doubted = Assert.Single(FloorInspection.Of(s_demo).Suspects);
        var slip = (Reading.Plan)s_demo.Readings.Single(r => r.Id == doubted.Reading);
        var again = slip with { Id = "again", Value = slip.Value - Length.FromInches(doubted.SizeMetres > 0 ? 1 : -1) };
        var mended = s_demo with
        {
            Readings = [.. s_demo.Readings.Select(r => r.Id == slip.Id ? r with { Withdrawn = "held at 1 in" } : r), again],
        };
        var answer = FloorInspection.Of(mended);
        Assert.Empty(answer.Suspects);
        Assert.StartsWith("A", answer.Damage[0].From, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TheDoubtedReadingTakenAgain_BothStanding_LeavesTheFirstOut_AndAsksForNothingAgain()
    {
        var doubted = Assert.Single(FloorInspection.Of(s_demo).Suspects);
        var slip = (Reading.Plan)s_demo.Readings.Single(r => r.Id == doubted.Reading);
        var again = slip with { Id = "again", Value = slip.Value - Length.FromInches(doubted.SizeMetres > 0 ? 1 : -1) };
        var both = FloorInspection.Of(s_demo with { Readings = [.. s_demo.Readings, again] });
        var mended = FloorInspection.Of(s_demo with { Readings = [.. s_demo.Readings.Where(r => r.Id != slip.Id), again] });
        var settled = Assert.Single(both.Suspects);
        Assert.Equal((slip.Id, true), (settled.Reading, settled.IsSettled));
        Assert.Contains("the repeat agrees with the rest", settled.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(both.Next, n => n.Settles.Any(s => s.StartsWith("doubt:", StringComparison.Ordinal)));
        Assert.DoesNotContain("take again", both.Overall.Headline, StringComparison.Ordinal);
        Assert.Equal(mended.Overall.Verdict, both.Overall.Verdict);
        Assert.Equal(mended.Damage[0].From, both.Damage[0].From);
    }

    [Fact]
    public void Of_TheSlipMadeTwice_AsksForItAgain()
    {
        // The repeat says the same inch too much: it settles nothing.
        var doubted = Assert.Single(FloorInspection.Of(s_demo).Suspects);
        var slip = (Reading.Plan)s_demo.Readings.Single(r => r.Id == doubted.Reading);
        var answer = FloorInspection.Of(s_demo with { Readings = [.. s_demo.Readings, slip with { Id = "again" }] });
        Assert.NotEmpty(answer.Suspects);
        Assert.All(answer.Suspects, s => Assert.False(s.IsSettled));
        Assert.Contains(answer.Next, n => n.Settles.Any(s => s.StartsWith("doubt:", StringComparison.Ordinal)));
    }

    [Fact]
    public void Of_OneRedundancyAndAContradiction_SaysThatItCannotTellWhich()
    {
        // A square bay of 1 m: two lengths, two widths and both diagonals are six lengths for five unknowns.
        var answer = FloorInspection.Of(Bay(diagonal: "1455 mm"));
        Assert.True(answer.Suspects.Count > 1);
        Assert.All(answer.Suspects, s => Assert.Contains("not enough was measured to say which", s.Sentence, StringComparison.Ordinal));
        Assert.Equal(Verdict.CannotTellYet, answer.Overall.Verdict);
    }

    [Fact]
    public void Of_AContradictionThatLeavesEverythingUnsure_IsNotCalledOut()
    {
        // Ten inches in one length of a bay with limits: the checks are sure to a foot, and want of knowledge is no damage.
        var bay = Bay(diagonal: "1668 mm");
        var limit = Length.FromMillimetres(3);
        var answer = FloorInspection.Of(bay with { Frame = bay.Frame with { Limits = new Limits(limit, limit, limit) } });
        Assert.Equal(Verdict.CannotTellYet, answer.Overall.Verdict);
    }

    [Fact]
    public void Of_ALengthTakenToTheEdgeOfAHole_NamesTheHalfHole()
    {
        // 16 mm holes; one of many lengths ends at the near edge of one instead of its centre.
        var bay = LongBay();
        var points = bay.Frame.Points.Select(p => p with { Hole = Length.FromMillimetres(16) });
        var readings = bay.Readings.Select(r =>
            r is Reading.Plan { Id: "A.L C.R" } p ? p with { Value = p.Value - Length.FromMillimetres(8) } : r
        );
        var suspect = Assert.Single(FloorInspection.Of(bay with { Frame = new Frame([.. points]), Readings = [.. readings] }).Suspects);
        Assert.Equal(("A.L C.R", "half-hole"), (suspect.Reading, suspect.Kind));
        Assert.Contains("edge instead of the centre", suspect.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AnyCheck_TellsWhichUnnoticedErrorWouldChangeItMost()
    {
        var bay = LongBay();
        var limit = Length.FromMillimetres(3);
        var checks = FloorInspection.Of(bay with { Frame = bay.Frame with { Limits = new Limits(limit, limit, limit) } }).Checks;
        var stagger = checks.Single(c => c.Id == "stagger:B");
        Assert.NotNull(stagger.Hidden);

        // The definition itself: enter the error into the reading named, and the check changes by as much. A quarter of it, so that nobody doubts the reading.
        var before = FloorInspection.Of(bay).Readings.Single(r => r.Id == stagger.Hidden.Reading);
        var error = Length.FromMillimetres(Math.Round((decimal)(before.MinimalDetectableMetres!.Value * 1000 / 4), 6));
        var spoilt = bay.Readings.Select(r =>
            r.Id == stagger.Hidden.Reading && r is Reading.Plan p ? p with { Value = p.Value + error } : r
        );
        var after = FloorInspection
            .Of(bay with { Frame = bay.Frame with { Limits = new Limits(limit, limit, limit) }, Readings = [.. spoilt] })
            .Checks.Single(c => c.Id == "stagger:B");
        Assert.Equal(
            stagger.Hidden.ChangeMetres,
            4 * Math.Abs(after.ValueMetres - stagger.ValueMetres),
            0.02 * stagger.Hidden.ChangeMetres
        );
    }

    [Fact]
    public void Of_ABayThatAgrees_DoubtsNothing() => Assert.Empty(FloorInspection.Of(Bay(diagonal: "1414 mm")).Suspects);

    [Fact]
    public void Of_TwoRowsExchanged_SaysOfEachInWhichRowItWouldFit()
    {
        var bay = LongBay();
        Length ValueOf(string id) => bay.Readings.OfType<Reading.Plan>().Single(r => r.Id == id).Value;
        var (one, other) = (ValueOf("A.L C.R"), ValueOf("A.L D.L"));
        var exchanged = bay.Readings.Select(r =>
            r switch
            {
                Reading.Plan { Id: "A.L C.R" } p => p with { Value = other },
                Reading.Plan { Id: "A.L D.L" } p => p with { Value = one },
                _ => r,
            }
        );
        var suspects = FloorInspection.Of(bay with { Readings = [.. exchanged] }).Suspects;
        Assert.Equal(["A.L C.R", "A.L D.L"], suspects.Select(s => s.Reading!).Order(StringComparer.Ordinal));
        Assert.All(suspects, s => Assert.Equal("rows-swapped", s.Kind));
        Assert.Contains("fit in the row of A.L to D.L", suspects.Single(s => s.Reading == "A.L C.R").Sentence, StringComparison.Ordinal);
        Assert.Contains("fit in the row of A.L to C.R", suspects.Single(s => s.Reading == "A.L D.L").Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void OfANetwork_LeftTakenForRight_IsNamed_WhetherTheMirrorIsDeclaredOrOnlyInTheNames(bool isDeclared)
    {
        var bay = LongBay();
        var points = bay.Frame.Points.Select(p => p with { Mirror = isDeclared ? p.Mirror : null });
        var side = bay.Readings.OfType<Reading.Plan>().Single(r => r.Id == "A.L C.L").Value;
        var readings = bay.Readings.Select(r => r is Reading.Plan { Id: "A.L C.R" } p ? p with { Value = side } : r);
        var answer = AdjustAnswer.Of(bay with { Frame = new Frame([.. points]), Readings = [.. readings] });
        var suspect = Assert.Single(answer.Suspects);
        Assert.Equal(("A.L C.R", "sides-swapped"), (suspect.Reading, suspect.Kind));
    }

    [Fact]
    public void Of_AnyFrame_WhatToMeasureNext_NamesNothingTwice()
    {
        // A check and a form of damage may have one name, as twist has; a level alone opens both.
        var bay = LongBay();
        var limit = Length.FromMillimetres(3);
        var answer = FloorInspection.Of(bay with { Frame = bay.Frame with { Limits = new Limits(limit, limit, limit) } });
        Assert.Contains(answer.Next, n => n.Settles.Contains("twist"));
        Assert.All(answer.Next, n => Assert.Equal(n.Settles.Distinct(), n.Settles));
        Assert.All(answer.Next, n => Assert.DoesNotContain("twist and twist", n.Sentence, StringComparison.Ordinal));
    }

    // Four pairs a metre apart on rails 800 mm apart, every length between them, read to 0.1 mm.
    private static CarFile LongBay()
    {
        var points = (
            from letter in "ABCD"
            from side in "LR"
            let place = new Place(
                Length.FromMillimetres(1000 * ('D' - letter)),
                Length.FromMillimetres(side == 'L' ? 400 : -400),
                Length.FromMillimetres(300)
            )
            select new FramePoint($"{letter}.{side}", $"{letter}.{(side == 'L' ? 'R' : 'L')}", Sketch: place)
        ).ToList();
        double Mm(Length? length) => length!.Value.Millimetres;
        var readings =
            from a in points
            from b in points
            where string.CompareOrdinal(a.Id, b.Id) < 0
            let d = double.Hypot(Mm(a.Sketch!.X) - Mm(b.Sketch!.X), Mm(a.Sketch.Y) - Mm(b.Sketch.Y))
            select new Reading.Plan($"{a.Id} {b.Id}", a.Id, b.Id, Length.FromMillimetres(Math.Round((decimal)d, 1)));
        return CarFile.Named("long bay", LengthUnit.Millimetre) with { Frame = new Frame(points), Readings = [.. readings] };
    }

    private static CarFile Bay(string diagonal)
    {
        static Length Read(string text) =>
            ((LengthOutcome.Read)LengthText.Read(text, LengthUnit.Millimetre, LengthSign.NeverNegative)).Value;
        FramePoint Point(string id, string mirror, int x, int y) =>
            new(id, mirror, Sketch: new Place(Length.FromMillimetres(x), Length.FromMillimetres(y), Length.Zero));
        return CarFile.Named("bay", LengthUnit.Millimetre) with
        {
            Frame = new Frame([
                Point("A.L", "A.R", 1000, 500),
                Point("A.R", "A.L", 1000, -500),
                Point("B.L", "B.R", 0, 500),
                Point("B.R", "B.L", 0, -500),
            ]),
            Readings =
            [
                new Reading.Plan("r1", "A.L", "A.R", Read("1000 mm")),
                new Reading.Plan("r2", "B.L", "B.R", Read("1000 mm")),
                new Reading.Plan("r3", "A.L", "B.L", Read("1000 mm")),
                new Reading.Plan("r4", "A.R", "B.R", Read("1000 mm")),
                new Reading.Plan("r5", "A.L", "B.R", Read("1414 mm")),
                new Reading.Plan("r6", "A.R", "B.L", Read(diagonal)),
            ],
        };
    }
}
