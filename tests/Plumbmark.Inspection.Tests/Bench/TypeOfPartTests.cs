using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Tests.Bench.WrittenParts;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>Which type a part is, told by its measures, its numbers and the car it is for; another type is not called bent.</summary>
public class TypeOfPartTests
{
    [Fact]
    public void WrongVariant_IsNotCalledBent()
    {
        var answer = BenchInspection.Of(BenchFiles.Car(TwoLevers, BenchFiles.Levers));
        var (left, right) = (answer.Part("lever.L")!, answer.Part("lever.R")!);
        Assert.Equal("early", left.Variant!.Straight!.Variant.Id);
        Assert.Equal("late", right.Variant!.Straight!.Variant.Id);
        Assert.Equal("pad-height", left.Variant.DecidedBy);
        Assert.False(left.IsRightForThisCar);
        Assert.True(right.IsRightForThisCar);
        Assert.Equal(Disposition.Replace, left.Disposition);
        Assert.Contains("not bent", left.Reasons[0], StringComparison.Ordinal);
        Assert.Contains("early type", left.Reasons[0], StringComparison.Ordinal);
        Assert.Equal(Disposition.Keep, right.Disposition);
        Assert.Equal(Verdict.True, right.Verdict);
        Assert.Equal(Verdict.Out, answer.Verdict);
        // Of two types, a difference of .22 in between the sides means nothing and must not be held against either.
        Assert.DoesNotContain(
            left.Dimensions.Concat(right.Dimensions).SelectMany(d => d.Comparisons),
            c => c.Against == ComparedWith.Mirror
        );
    }

    [Fact]
    public void OneDimensionAlone_DoesNotSettleTheTypeOfAPartBetweenTwo()
    {
        // 1.24 in: near the late type's 1.20, four hundredths off. A bend of one millimetre, or a late one badly measured?
        var answer = BenchInspection
            .Of(
                BenchFiles.Car(
                    """{ "id": "p", "kind": "steering-lever", "measures": [ { "id": "m", "kind": "length", "dimension": "arm-length", "values": ["5.50"] } ] }""",
                    BenchFiles.Levers
                )
            )
            .Parts[0];
        Assert.Equal(Verdict.CannotTellYet, answer.Verdict);
        Assert.Equal(Disposition.MeasureAgain, answer.Disposition);
        var pair = Assert.Single(answer.Variant!.LookAlikes);
        Assert.Equal("pad-height", pair.MeasureNext);
        Assert.Equal(.22 * .0254, pair.DifferenceMetresOrRadians!.Value, 1e-12);
        Assert.StartsWith("Measure pad height: it tells early type from late type.", answer.MeasureNext[0], StringComparison.Ordinal);
    }

    [Fact]
    public void TypesThatDifferNowhere_AreSaidToBeInseparable()
    {
        const string Twins = """
            { "id": "a", "kind": "steering-lever", "name": "left pattern", "dimensions": [ { "dimension": "pad-height", "nominal": "1.20" } ] },
            { "id": "b", "kind": "steering-lever", "name": "right pattern", "dimensions": [ { "dimension": "pad-height", "nominal": "1.20" } ] }
            """;
        var answer = BenchInspection.Of(BenchFiles.Car(Lever("1.20", null), Twins)).Parts[0];
        var pair = Assert.Single(answer.Variant!.LookAlikes);
        Assert.Null(pair.MeasureNext);
        Assert.Contains("cannot be told apart by any dimension in the book", pair.Sentence, StringComparison.Ordinal);
        Assert.Null(answer.Variant.Type);
        Assert.Equal(Disposition.MeasureAgain, answer.Disposition);
    }

    [Fact]
    public void ANumberOnThePart_IsEvidenceWhereMeasuresAreNot()
    {
        const string Numbered = """
            { "id": "p", "kind": "steering-lever", "card": { "numbers": [ { "number": "51 0417", "how": "cast" } ] },
              "measures": [ { "id": "m", "kind": "length", "dimension": "arm-length", "values": ["5.50"] } ] }
            """;
        var without = BenchInspection
            .Of(BenchFiles.Car(Numbered.Replace("51 0417", "9", StringComparison.Ordinal), BenchFiles.Levers))
            .Parts[0];
        var with = BenchInspection.Of(BenchFiles.Car(Numbered, BenchFiles.Levers)).Parts[0];
        double Early(PartAnswer answer) => answer.Variant!.Odds.Single(o => o.Variant.Id == "early").Straight;
        // Odds of early to late: 1 to 4 by the serial number, and ten times that with the number: 10 to 4.
        Assert.Equal(1.0 / 4, Early(without) / without.Variant!.Odds.Single(o => o.Variant.Id == "late").Straight, 1e-9);
        Assert.Equal(10.0 / 4, Early(with) / with.Variant!.Odds.Single(o => o.Variant.Id == "late").Straight, 1e-9);
    }

    [Fact]
    public void NumberAndSerial_DoNotSettleWhatTheMeasuresCannotSeparate()
    {
        const string Numbered = """
            { "id": "p", "kind": "steering-lever", "card": { "numbers": [ { "number": "51-0533", "how": "cast" } ] },
              "measures": [ { "id": "m", "kind": "length", "dimension": "arm-length", "values": ["5.50"], "tool": "caliper" } ] }
            """;
        var part = BenchInspection.Of(BenchFiles.Car(Numbered, BenchFiles.Levers)).Parts[0];
        // Serial and number together, 4 x 10 to 1, name the late type; the one dimension that both share says nothing of it.
        Assert.Equal("late", part.Variant!.Type!.Variant.Id);
        Assert.Equal((Verdict.CannotTellYet, Disposition.MeasureAgain), (part.Verdict, part.Disposition));
        Assert.Null(part.IsRightForThisCar);
        Assert.Contains("early type and late type cannot be told apart by what was measured; pad height would tell.", part.Reasons);
        Assert.Equal("Measure pad height: it tells early type from late type.", part.MeasureNext[0]);
        // Asked for once, though it is also a figure of the book.
        Assert.Single(part.MeasureNext, n => n.StartsWith("Measure pad height", StringComparison.Ordinal));
    }

    [Fact]
    public void BookPages_AreAsked_AndTheOwnersOwnTypeGoesFirst()
    {
        var car = BenchFiles.Car(Lever("1.20", "5.50"));
        Assert.Null(BenchInspection.Of(car).Parts[0].Variant);
        PartVariant[] book =
        [
            new("book: late", PartKind.SteeringLever, "late type", null, null, [Figure("pad-height", 1.30m)]),
            new("book: rare", PartKind.SteeringLever, "rare type", null, null, [Figure("pad-height", 1.60m)]),
        ];
        Assert.Equal(["late type", "rare type"], BenchInspection.Of(car, book).Parts[0].Variant!.Odds.Select(o => o.Variant.Name));
        var own = BenchFiles.Car(Lever("1.20", "5.50"), BenchFiles.Levers);
        Assert.Equal(["early", "late", "book: rare"], BenchInspection.VariantsOf(own, book).Select(v => v.Id));
    }

    private static BookFigure Figure(string dimension, decimal inches) =>
        new(dimension, new Amount.OfLength(Engine.Lengths.Length.FromInches(inches)));
}
