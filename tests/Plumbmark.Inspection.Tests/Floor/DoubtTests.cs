using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;

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
    public void Of_ABayThatAgrees_DoubtsNothing() => Assert.Empty(FloorInspection.Of(Bay(diagonal: "1414 mm")).Suspects);

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
