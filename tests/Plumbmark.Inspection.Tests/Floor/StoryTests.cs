using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Press;
using Plumbmark.Inspection.Road;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Floor;

/// <summary>Six invented repairs from end to end: the numbers fit the geometry they state, and the answer has the right words.</summary>
public class StoryTests
{
    public static TheoryData<string> All => [.. Stories.All];

    [Theory]
    [MemberData(nameof(All))]
    public void EveryStory_IsACarFileThatReadsBack(string story)
    {
        var car = Stories.Car(story);
        var bytes = CarFileWriter.Write(car);
        Assert.Equal(bytes, CarFileReader.Read(bytes).Match(CarFileWriter.Write, _ => []));
        Assert.Contains("Invented", car.Car.Note, StringComparison.Ordinal);
    }

    /// <summary>The moved point of each story, and how far it moved to the left, in inches.</summary>
    [Theory]
    [InlineData(Stories.TheInch, "", 0)]
    [InlineData(Stories.OneHorn, "A.R", 0.31)]
    [InlineData(Stories.OneHornAfter, "A.R", 0.05)]
    [InlineData(Stories.EqualDiagonals, "", 0)]
    [InlineData(Stories.BentMount, "C.R", 0.10)]
    [InlineData(Stories.BentMountAfter, "C.R", 0.01)]
    public void Lengths_AreThoseOfTheGeometry(string story, string moved, double left)
    {
        var car = Stories.Car(story);
        var places = car.Frame.Points.ToDictionary(
            p => p.Id,
            p => (X: p.Sketch!.X!.Value.Inches, Y: p.Sketch.Y!.Value.Inches + (p.Id == moved ? left : 0)),
            StringComparer.Ordinal
        );
        var half = car.Tools.Single(t => t.Id == "tape").Division!.Value.Inches / 2;
        var lengths = car.Readings.OfType<Reading.Plan>().ToList();
        Assert.True(lengths.Count > 30);
        foreach (var reading in lengths)
        {
            var (a, b) = (places[reading.From], places[reading.To]);
            var inch = reading.Note is null ? 0 : 1; // the one read from the 1 in mark says so
            Assert.Equal(double.Hypot(a.X - b.X, a.Y - b.Y) + inch, reading.Value.Inches, half + 1e-9);
        }
    }

    [Fact]
    public void TheInch_IsNamed_AndTheSecondReadingSettlesIt()
    {
        var car = Stories.Car(Stories.TheInch);
        var suspect = Assert.Single(FloorInspection.Of(car).Suspects);
        Assert.Equal("inch", suspect.Kind);
        Assert.Contains("B.R to E.L, 67 5/8, is 1 in more", suspect.Sentence, StringComparison.Ordinal);
        Assert.Contains("Measure B.R to E.L again", suspect.Sentence, StringComparison.Ordinal);

        var wrong = (Reading.Plan)car.Readings.Single(r => r.Id == suspect.Reading);
        var again = new Reading.Plan("again", "B.R", "E.L", In("66 21/32")) { Tool = "tape" };
        var answer = FloorInspection.Of(
            car with
            {
                Readings = [.. car.Readings.Select(r => r == wrong ? r with { Withdrawn = "held at 1 in" } : r), again],
            }
        );
        Assert.Empty(answer.Suspects);
        Assert.Empty(answer.Damage);

        // Half an inch and more of diamond it would have been: rail shift = difference x length / (2 x along) = 1.00 x 66.64 / 120.
        Assert.Equal(0.56, 1.00 * 66.64 / 120, 0.005);
    }

    [Fact]
    public void OneHorn_IsItsPairsOwnMatter_AndTheCentreLineDoesNotFollowIt()
    {
        var answer = FloorInspection.Of(Stories.Car(Stories.OneHorn));
        var damage = Assert.Single(answer.Damage);
        Assert.Equal(("pair", "A"), (damage.Form, damage.From));
        Assert.InRange(
            double.Hypot(0.31, 0.19) * 0.0254,
            damage.AmountMetres - (2 * damage.UMetres),
            damage.AmountMetres + (2 * damage.UMetres)
        );
        Assert.Contains("A.R 11/32 in inward and 3/16 in down", damage.Sentence, StringComparison.Ordinal);
        Assert.Contains("cannot say which", damage.Sentence, StringComparison.Ordinal);
        Assert.Contains(
            answer.Overall.Why,
            w => w.StartsWith("It is local:", StringComparison.Ordinal) && w.Contains("B.L, is 22", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(answer.Checks, c => c.Verdict == Verdict.Out && !c.Id.EndsWith(":A", StringComparison.Ordinal));

        // A line from the middle of A to the middle of F throws B by 0.155 x 76 / 98.
        var thrown = Assert.Single(answer.LookAlikes, l => l.Kind == "centre-line");
        Assert.Equal(0.155 * 76 / 98, Math.Abs(thrown.SizeMetres!.Value) / 0.0254, 0.035); // what tape and drops leave of a middle
        Assert.Contains("would throw B", thrown.Sentence, StringComparison.Ordinal);

        Assert.Empty(FloorInspection.Of(Stories.Car(Stories.OneHornAfter)).Damage);
    }

    [Fact]
    public void EqualDiagonals_AreNeverTrueWithoutHeights_AndTwistedWithThem()
    {
        var flat = FloorInspection.Of(Stories.Car(Stories.EqualDiagonals));
        Assert.Equal(Verdict.CannotTellYet, flat.Overall.Verdict);
        Assert.All(flat.Comparisons, c => Assert.Contains("agree", c.Sentence, StringComparison.Ordinal));
        Assert.Contains(
            flat.Overall.Why,
            w =>
                w.Contains("Twist of any size", StringComparison.Ordinal)
                && w.Contains("however equal the diagonals are", StringComparison.Ordinal)
        );
        Assert.Contains(flat.Next, n => n.Kind == "height");

        var car = Stories.Car(Stories.EqualDiagonalsWithHeights);
        var answer = FloorInspection.Of(car);
        Assert.Equal(Verdict.Out, answer.Overall.Verdict);
        Assert.Equal(["sag", "twist"], answer.Damage.Select(d => d.Form).Order(StringComparer.Ordinal));
        Assert.Equal(0.375, Math.Abs(answer.Checks.Single(c => c.Id == "twist").ValueMetres) / 0.0254, 0.04);
        Assert.Equal(0.22, answer.Damage.Single(d => d.Form == "sag").AmountMetres / 0.0254, 0.04);
        Assert.Equal("D", answer.Damage.Single(d => d.Form == "sag").From);
        Assert.Equal(0.77, Math.Atan(0.375 / 28) * 180 / Math.PI, 0.01);
        Assert.Contains("3/8 in high there against the other three: that is twist", FloorText.Of(car, answer), StringComparison.Ordinal);

        var after = FloorInspection.Of(Stories.Car(Stories.EqualDiagonalsAfter));
        Assert.Equal(Verdict.True, after.Overall.Verdict);
    }

    [Fact]
    public void WrongVariant_IsNotBent()
    {
        var answer = BenchInspection.Of(Stories.Car(Stories.WrongVariant));
        var (left, right) = (answer.Part("lever.L")!, answer.Part("lever.R")!);
        Assert.Equal((Disposition.Replace, Disposition.Keep), (left.Disposition, right.Disposition));
        Assert.Contains("It is not bent: it is the early lever", left.Reasons[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Press_EndsStraightAndTested()
    {
        var job = Stories.Car(Stories.Press).Press[0];
        var report = PressReport.Of(job);
        Assert.True(Assert.IsType<PressState.Straight>(report.State).IsTested);
        Assert.All(report.Log!.Bites.Skip(1), b => Assert.Equal(0.14, b.SpringBackMetres / 0.0254, 0.001));
    }

    [Fact]
    public void BentMount_IsNamedOnASquareFrame_AndItsEffectOnTheWheelIsTold()
    {
        var car = Stories.Car(Stories.BentMount);
        var answer = FloorInspection.Of(car);
        Assert.Equal(Verdict.Out, answer.Overall.Verdict);
        var damage = Assert.Single(answer.Damage);
        Assert.Equal(("point", "C.R"), (damage.Form, damage.From));
        Assert.InRange(0.10 * 0.0254, damage.AmountMetres - (2 * damage.UMetres), damage.AmountMetres + (2 * damage.UMetres));
        Assert.Contains("inward", damage.Sentence, StringComparison.Ordinal);
        Assert.Contains(answer.Overall.Why, w => w.Contains("the Road's to say", StringComparison.Ordinal));

        // The pins are 9 in apart: 0.10 in is 0.64 degrees of skew, and 11 in of arm carry the joint 0.12 in fore and aft.
        Assert.Equal(0.64, Math.Atan(0.10 / 9) * 180 / Math.PI, 0.005);
        var (sound, bent) = (Wheels(Stories.BentMountAfter), Wheels(Stories.BentMount));
        Assert.Equal(0.8, Math.Abs(bent.Castor - sound.Castor), 0.15);
        Assert.Equal(0.3, Math.Abs(bent.Camber - sound.Camber), 0.1);

        Assert.Equal(Verdict.True, FloorInspection.Of(Stories.Car(Stories.BentMountAfter)).Overall.Verdict);
    }

    private static (double Castor, double Camber) Wheels(string story)
    {
        var road = RoadInspection.Of(Stories.Car(story));
        double Degrees(FigureKind kind) => road.Figures.Single(f => f.Kind == kind && f.Side == Side.Right).Value * 180 / Math.PI;
        return (Degrees(FigureKind.Castor), Degrees(FigureKind.Camber));
    }

    private static Length In(string text) =>
        LengthText.Read(text, LengthUnit.Inch).Match(l => l, r => throw new ArgumentException(r.Sentence, nameof(text)));
}
