using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Tests.Bench.WrittenParts;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>Whole answers: what measures are enough, whose limit holds, and what is said in every case.</summary>
public class BenchInspectionTests
{
    [Fact]
    public void WantOfKnowledge_CallsNoPartOut()
    {
        // An eye height sure to an inch only: within a thirty-second with little probability, but not shown to be beyond it either.
        var car = BenchFiles.Car(Eyes("2.00", "2.10").Replace("\"tool\": \"caliper\"", "\"sigma\": \"1\"", StringComparison.Ordinal));
        var answer = BenchInspection.Of(car);
        Assert.All(answer.Parts, p => Assert.True(p.Dimensions[0].Comparisons[0].ProbabilityWithin < 0.05));
        Assert.All(answer.Parts, p => Assert.Equal(Verdict.CannotTellYet, p.Verdict));
        Assert.All(answer.Parts, p => Assert.DoesNotContain(p.Reasons, r => r.Contains(": out.", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(
        "lower-wishbone",
        Rods,
        "Only parallelism of front and rear was measured and found true; nothing tells yet how straight the flanges are and the heights of the eyes."
    )]
    [InlineData(
        "lower-wishbone",
        Rods + ", " + Flange,
        "Only parallelism of front and rear and flange were measured and found true; nothing tells yet the heights of the eyes."
    )]
    [InlineData("spring-seat", Flange, "Only flange was measured and found true; nothing tells yet the heights of the eyes.")]
    public void TooLittleOfTheShape_IsNeverCalledStraight(string kind, string measures, string sentence)
    {
        var part = BenchInspection
            .Of(BenchFiles.Car($$"""{ "id": "p", "kind": "{{kind}}", "made": "pressed", "measures": [ {{measures}} ] }"""))
            .Parts[0];
        Assert.All(part.Dimensions, d => Assert.Equal(Verdict.True, Assert.Single(d.Comparisons).Verdict));
        Assert.Equal((Verdict.CannotTellYet, Disposition.MeasureAgain), (part.Verdict, part.Disposition));
        Assert.Contains(sentence, part.Reasons);
        Assert.Contains(part.MeasureNext, n => n.StartsWith("Measure the heights of the eyes", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("arm-length", "5.50", "nothing tells yet the heights of the eyes", "Measure pad height: the book has a figure for it.")]
    [InlineData("pad-height", "1.20", "nothing tells yet how long the arm is", "Measure arm length: the book has a figure for it.")]
    public void HalfALever_IsNeverCalledStraight(string dimension, string value, string sentence, string next)
    {
        const string LateOnly = """
            { "id": "late", "kind": "steering-lever", "name": "late type",
              "dimensions": [ { "dimension": "pad-height", "nominal": "1.20", "tolerance": "0.015" }, { "dimension": "arm-length", "nominal": "5.50", "tolerance": "0.015" } ] }
            """;
        var measure = $$"""{ "id": "m", "kind": "length", "dimension": "{{dimension}}", "values": ["{{value}}"], "tool": "caliper" }""";
        var part = BenchInspection
            .Of(BenchFiles.Car($$"""{ "id": "p", "kind": "steering-lever", "measures": [ {{measure}} ] }""", LateOnly))
            .Parts[0];
        Assert.Equal(Verdict.True, Assert.Single(part.Dimensions[0].Comparisons).Verdict);
        Assert.Equal(Disposition.MeasureAgain, part.Disposition);
        Assert.Contains(part.Reasons, r => r.Contains(sentence, StringComparison.Ordinal));
        Assert.Contains(next, part.MeasureNext);
        Assert.Equal(Disposition.Keep, BenchInspection.Of(BenchFiles.Car(Lever("1.20", "5.50"), LateOnly)).Parts[0].Disposition);
    }

    [Fact]
    public void AHeightWithoutAnythingToHoldItAgainst_AsksForTheBookOrTheOtherSide()
    {
        var part = BenchInspection
            .Of(
                BenchFiles.Car(
                    $$"""{ "id": "p", "kind": "lower-wishbone", "made": "pressed", "measures": [ {{Rods}}, {{Flange}}, { "id": "e", "kind": "length", "dimension": "eye-height", "values": ["2.00"] } ] }"""
                )
            )
            .Parts[0];
        Assert.Equal(Disposition.MeasureAgain, part.Disposition);
        Assert.StartsWith(
            "Find the book's figure for eye height, or measure the other side",
            part.MeasureNext[0],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void AnOvalBush_AsksForItsPinOrALimit_AndShowsASize()
    {
        var car = BenchFiles.Car(
            """{ "id": "p", "kind": "bush", "measures": [ { "id": "m", "kind": "bore", "bore": "eye", "mouth": [".750", ".829"], "tool": "caliper" } ] }"""
        );
        var answer = BenchInspection.Of(car);
        Assert.Equal(
            "Tell a limit for the ovality of eye, or the diameter of the pin or bush that goes in.",
            Assert.Single(answer.Parts[0].MeasureNext)
        );
        var report = BenchReport.Of(car, answer);
        Assert.Contains(" 0.079 in", report, StringComparison.Ordinal);
        Assert.DoesNotContain("−0.079", report, StringComparison.Ordinal);
    }

    [Fact]
    public void AMeasureThatLacksSomething_IsNotCalledNoMeasure()
    {
        var part = BenchInspection
            .Of(
                BenchFiles.Car(
                    """{ "id": "p", "kind": "own", "measures": [ { "id": "m", "kind": "centres", "from": "p", "to": "q", "over": "inside", "values": ["5"] } ] }"""
                )
            )
            .Parts[0];
        Assert.NotEmpty(part.Wanting);
        Assert.Equal("What was measured is not enough to work anything out yet.", Assert.Single(part.Reasons));
    }

    [Fact]
    public void NoLimitKnown_GivesTheNumberAndNoVerdict()
    {
        var part = BenchInspection
            .Of(
                BenchFiles.Car(
                    """{ "id": "p", "kind": "own", "measures": [ { "id": "m", "kind": "bore", "bore": "eye", "mouth": [".75", ".76"] } ] }"""
                )
            )
            .Parts[0];
        var oval = part.Dimensions.Single(d => d.Value.Dimension == "eye.ovality");
        Assert.Null(Assert.Single(oval.Comparisons).Verdict);
        Assert.Equal(Verdict.CannotTellYet, part.Verdict);
        Assert.Contains(part.Reasons, r => r.StartsWith("No limit is known", StringComparison.Ordinal));
    }

    [Fact]
    public void OwnLimit_GoesBeforePractice_AndSaysWhoseItIs()
    {
        const string Limited = """
            { "id": "p", "kind": "bush", "limits": [ { "dimension": "eye.ovality", "within": "0.002", "note": "club sheet" } ],
              "measures": [ { "id": "m", "kind": "bore", "bore": "eye", "mouth": [".7500", ".7600"], "pin": ".749", "tool": "micrometer" } ] }
            """;
        var part = BenchInspection.Of(BenchFiles.Car(Limited)).Parts[0];
        var oval = part.Dimensions.Single(d => d.Value.Dimension == "eye.ovality").Comparisons[0];
        Assert.Equal(Verdict.Out, oval.Verdict);
        Assert.Equal("club sheet", oval.Limit!.Note);
        var play = part.Dimensions.Single(d => d.Value.Dimension == "eye.clearance").Comparisons[0];
        Assert.Contains("common practice, from memory", play.Limit!.Note, StringComparison.Ordinal);
        Assert.Equal(Disposition.Replace, part.Disposition);
        Assert.Contains(
            part.Reasons,
            r => r.StartsWith("The bore is worn", StringComparison.Ordinal) || r.StartsWith("It is worn", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void EmptyBench_CannotTell()
    {
        var empty = BenchInspection.Of(BenchFiles.Car(""));
        Assert.Equal(Verdict.CannotTellYet, empty.Verdict);
        var unmeasured = BenchInspection.Of(BenchFiles.Car("""{ "id": "p", "kind": "upright" }""")).Parts[0];
        Assert.Equal("Nothing has been measured on it yet.", unmeasured.Reasons[0]);
        Assert.Contains(unmeasured.MeasureNext, n => n.Contains("included angle", StringComparison.Ordinal));
    }

    [Fact]
    public void EveryAnswer_SaysThatItIsNoCertificate()
    {
        foreach (var part in BenchInspection.Of(BenchFiles.Car(TwoLevers, BenchFiles.Levers)).Parts)
        {
            Assert.Contains(part.Reminders, r => r.Contains("does not say that a part is safe", StringComparison.Ordinal));
            Assert.Contains(part.Reminders, r => r.Contains("shows a crack", StringComparison.Ordinal));
        }
    }
}
