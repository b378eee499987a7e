using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor;

/// <summary>Lengths that fit no figure: the answer says that they contradict each other, and which, not that there are too few.</summary>
public class ContradictionTests
{
    [Fact]
    public void Of_ATriangleThatCannotClose_NamesItsThreeLengths()
    {
        // 28 and 60 together are 88: a third side of 166 has no figure.
        var answer = FloorInspection.Of(Triangle("28", "60", "166 1/4"));
        Assert.Equal(Verdict.CannotTellYet, answer.Overall.Verdict);
        Assert.Contains("contradict", answer.Overall.Headline, StringComparison.Ordinal);
        Assert.Contains(
            answer.Overall.Why,
            w => w.Contains("A.R to B.L reads 166 1/4 in, yet A.L to A.R and A.L to B.L together are only 88 in", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(answer.Overall.Why, w => w.Contains("too few", StringComparison.Ordinal));
        Assert.Equal(["doubt:r1", "doubt:r2", "doubt:r3"], answer.Next.Take(3).SelectMany(n => n.Settles).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Of_ATriangleThatJustCloses_SaysNothingOfTheKind() =>
        Assert.DoesNotContain(
            FloorInspection.Of(Triangle("28", "60", "66 1/4")).Overall.Why,
            w => w.Contains("contradict", StringComparison.Ordinal)
        );

    [Fact]
    public void Of_ALengthReadTwiceAHundredInchesApart_NamesBothReadings()
    {
        var triangle = Triangle("28", "60", "66 1/4");
        var twice = triangle with { Readings = [.. triangle.Readings, Length("r4", "A.L", "B.L", "160")] };
        Assert.Contains(
            "A.L to B.L reads 160 in (reading r4), and 60 in another time (reading r2).",
            FloorInspection.Of(twice).Overall.Why
        );
    }

    [Theory]
    [InlineData("A.L", "B.R")]
    [InlineData("C.L", "C.R")]
    [InlineData("B.R", "D.R")]
    public void Of_AWholeSurveyWithOneLengthAHundredInchesTooLong_NamesThatLength(string from, string to)
    {
        var random = new Random(11);
        var car = SimulatedSurvey.Measure(new TrueFrame(FrameDesign.Random(random)), new SurveyStyle(), random);
        var spoilt = car.Readings.OfType<Reading.Plan>().Single(r => r.From == from && r.To == to);
        var wrong = spoilt with { Value = spoilt.Value + Engine.Lengths.Length.FromInches(100) };
        var answer = FloorInspection.Of(car with { Readings = [.. car.Readings.Select(r => r == spoilt ? wrong : r)] });
        Assert.Equal(Verdict.CannotTellYet, answer.Overall.Verdict);
        var named = answer.Suspects.Select(s => s.Reading).Concat(answer.Next.Take(1).SelectMany(n => n.Settles));
        Assert.Contains(named, n => n == spoilt.Id || n == $"doubt:{spoilt.Id}");
    }

    private static CarFile Triangle(string across, string side, string diagonal) =>
        CarFile.Named("Triangle", LengthUnit.Inch) with
        {
            Frame = new Frame([new FramePoint("A.L", "A.R"), new FramePoint("A.R", "A.L"), new FramePoint("B.L")], null),
            Readings = [Length("r1", "A.L", "A.R", across), Length("r2", "A.L", "B.L", side), Length("r3", "A.R", "B.L", diagonal)],
        };

    private static Reading.Plan Length(string id, string from, string to, string text) =>
        new(id, from, to, LengthText.Read(text, LengthUnit.Inch).Match(l => l, r => throw new ArgumentException(r.Sentence, nameof(text))));
}
