using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>Whole answers: is it straight, which type, is it worth keeping.</summary>
public class BenchInspectionTests
{
    /// <summary>Two levers of different pad height, both straight; the car's serial number is above the break.</summary>
    private const string TwoLevers = """
        { "id": "lever.L", "kind": "steering-lever", "made": "forged", "mirror": "lever.R",
          "measures": [ { "id": "m1", "kind": "length", "dimension": "pad-height", "values": ["1.42"], "tool": "caliper" },
                        { "id": "m2", "kind": "length", "dimension": "arm-length", "values": ["5.495"], "tool": "caliper" } ] },
        { "id": "lever.R", "kind": "steering-lever", "made": "forged", "mirror": "lever.L",
          "measures": [ { "id": "m3", "kind": "length", "dimension": "pad-height", "values": ["1.20"], "tool": "caliper" },
                        { "id": "m4", "kind": "length", "dimension": "arm-length", "values": ["5.503"], "tool": "caliper" } ] }
        """;

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
    public void WantOfKnowledge_CallsNoPartOut()
    {
        // An eye height sure to an inch only: within a thirty-second with little probability, but not shown to be beyond it either.
        var car = BenchFiles.Car(Eyes("2.00", "2.10").Replace("\"tool\": \"caliper\"", "\"sigma\": \"1\"", StringComparison.Ordinal));
        var answer = BenchInspection.Of(car);
        Assert.All(answer.Parts, p => Assert.True(p.Dimensions[0].Comparisons[0].ProbabilityWithin < 0.05));
        Assert.All(answer.Parts, p => Assert.Equal(Verdict.CannotTellYet, p.Verdict));
        Assert.All(answer.Parts, p => Assert.DoesNotContain(p.Reasons, r => r.Contains(": out.", StringComparison.Ordinal)));
    }

    [Fact]
    public void BentTooFar_IsForAnEngineer()
    {
        var arm = BenchInspection.Of(BenchFiles.Car(Arm("pressed", "1.2"))).Parts[0];
        Assert.Equal(Disposition.Replace, arm.Disposition);
        Assert.Contains(arm.Reasons, r => r.Contains("engineer", StringComparison.Ordinal));
    }

    [Fact]
    public void StraightArm_IsKept_AndACrackNever()
    {
        Assert.Equal(Disposition.Keep, BenchInspection.Of(WholeArm()).Parts[0].Disposition);
        var cracked = BenchInspection.Of(WholeArm("\"cracked\"")).Parts[0];
        Assert.Equal(Disposition.Replace, cracked.Disposition);
        Assert.Equal(Verdict.True, cracked.Verdict);
    }

    [Fact]
    public void PressedBeforeAndTrue_IsKeptUnderWatch()
    {
        var arm = BenchInspection.Of(WholeArm("\"pressed-before\"")).Parts[0];
        Assert.Equal(Disposition.Keep, arm.Disposition);
        Assert.Contains(arm.Reasons, r => r.Contains("every year", StringComparison.Ordinal));
        Assert.Contains(arm.Reminders, r => r.Contains("tested for cracks", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("heated", "It was heated")]
    [InlineData("welded", "It was welded")]
    public void HeatedOrWeldedAndTrue_IsNotKeptWithoutAWord(string condition, string word)
    {
        var arm = BenchInspection.Of(WholeArm($"\"{condition}\"")).Parts[0];
        Assert.Equal(Disposition.Keep, arm.Disposition);
        Assert.Contains(
            arm.Reasons,
            r => r.StartsWith(word, StringComparison.Ordinal) && r.Contains("competent person", StringComparison.Ordinal)
        );
        Assert.Contains(arm.Reminders, r => r.Contains("tested for cracks", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("upright")]
    [InlineData("steering-lever")]
    [InlineData("track-rod")]
    [InlineData("ball-joint")]
    public void HeatedOrWeldedSteeringPart_IsReplacedThoughItMeasuresTrue(string kind)
    {
        var part = BenchInspection.Of(BenchFiles.Car(Arm("forged", ".003", kind, "\"heated\""))).Parts[0];
        Assert.Equal(Disposition.Replace, part.Disposition);
        Assert.Contains(part.Reasons, r => r.Contains("not used after that", StringComparison.Ordinal));
    }

    [Fact]
    public void LookedOverByEye_IsNoCrackTest()
    {
        var arm = BenchFiles.Car(Arm("forged", ".003"));
        var byEye = arm with { Parts = new PartsSection([arm.Parts.Items[0] with { ClearBy = CrackMethod.Eye }], []) };
        Assert.Contains(BenchInspection.Of(byEye).Parts[0].Reminders, r => r.Contains("tested for cracks", StringComparison.Ordinal));
        var byDye = arm with { Parts = new PartsSection([arm.Parts.Items[0] with { ClearBy = CrackMethod.Dye }], []) };
        Assert.Contains(BenchInspection.Of(byDye).Parts[0].Reminders, r => r.Contains("does not prove", StringComparison.Ordinal));
    }

    [Fact]
    public void LeftAgainstRight_OutOfLimit_DoesNotSayWhichSide()
    {
        var answer = BenchInspection.Of(BenchFiles.Car(Eyes("2.00", "2.10")));
        Assert.All(answer.Parts, p => Assert.Equal(Verdict.CannotTellYet, p.Verdict));
        Assert.All(answer.Parts, p => Assert.Equal(Disposition.MeasureAgain, p.Disposition));
        Assert.Contains("Which of the two is out, this comparison cannot say.", answer.Parts[0].Reasons[0], StringComparison.Ordinal);
        Assert.Contains(answer.Parts[0].MeasureNext, n => n.Contains("third part", StringComparison.Ordinal));
    }

    [Fact]
    public void LeftAgainstRight_Alike_IsKept_AndSaysWhatItCannotSee()
    {
        var answer = BenchInspection.Of(BenchFiles.Car(Eyes("2.000", "2.004")));
        Assert.All(answer.Parts, p => Assert.Equal(Verdict.True, p.Verdict));
        Assert.Contains(answer.Parts[0].Reasons, r => r.Contains("alike on both sides cannot be seen", StringComparison.Ordinal));
    }

    [Fact]
    public void LeftAgainstRight_BookSettlesWhichSide()
    {
        const string Book = """
            { "id": "arm", "kind": "lower-wishbone", "name": "lower arm", "dimensions": [ { "dimension": "eye-height", "nominal": "2.00", "tolerance": "1/32" } ] }
            """;
        var answer = BenchInspection.Of(BenchFiles.Car(Eyes("2.00", "2.10"), Book));
        Assert.Equal([Verdict.True, Verdict.Out], answer.Parts.Select(p => p.Verdict));
        Assert.Equal([Disposition.Keep, Disposition.Straighten], answer.Parts.Select(p => p.Disposition));
    }

    [Fact]
    public void LeftAgainstRight_APartBentByItsOwnMeasures_BearsTheDifference()
    {
        string Arm(string side, string other, string eye, string gap) =>
            $$"""
                { "id": "arm.{{side}}", "kind": "lower-wishbone", "made": "pressed", "mirror": "arm.{{other}}", "measures": [
                  { "id": "m", "kind": "length", "dimension": "eye-height", "values": ["{{eye}}"], "tool": "caliper" },
                  { "id": "n", "kind": "straightedge", "dimension": "flange", "gaps": [ { "at": 0, "gap": 0 }, { "at": 5, "gap": "{{gap}}" }, { "at": 10, "gap": 0 } ] }, {{Rods}} ] }
                """;
        var answer = BenchInspection.Of(BenchFiles.Car(Arm("L", "R", "2.19", ".15") + ", " + Arm("R", "L", "2.00", ".01")));
        Assert.Equal([Disposition.Straighten, Disposition.Keep], answer.Parts.Select(p => p.Disposition));
        var difference = answer.Parts[1].Dimensions[0].Comparisons.Single(c => c.Against == ComparedWith.Mirror);
        Assert.Equal("arm.L", difference.PutDownTo);
        Assert.Contains(answer.Parts[1].Reasons, r => r.Contains("put down to arm.L", StringComparison.Ordinal));
    }

    [Fact]
    public void BackToBack_IsSharperThanTwoMeasures()
    {
        var car = BenchFiles.Car(
            """
            { "id": "arm.L", "kind": "lower-wishbone", "mirror": "arm.R",
              "measures": [ { "id": "b", "kind": "back-to-back", "differences": [ { "dimension": "eye-height", "value": "0.003" } ], "tool": "feeler" } ] },
            { "id": "arm.R", "kind": "lower-wishbone", "mirror": "arm.L",
              "measures": [ { "id": "m", "kind": "length", "dimension": "eye-height", "values": ["2.00"] } ] }
            """
        );
        var answer = BenchInspection.Of(car);
        var left = Assert.Single(answer.Parts[0].Dimensions[0].Comparisons);
        Assert.Equal(.003 * .0254, left.Deviation, 1e-12);
        Assert.True(left.U < .05e-3);
        // The other part sees the same difference from its side.
        Assert.Equal(
            -left.Deviation,
            answer.Parts[1].Dimensions[0].Comparisons.Single(c => c.Against == ComparedWith.Mirror).Deviation,
            1e-15
        );
        Assert.All(answer.Parts, p => Assert.Equal(Verdict.True, p.Dimensions[0].Comparisons[0].Verdict));
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
    public void WeakSpring_AgainstItsPartner_IsRenewedInPairs()
    {
        const string Springs = """
            { "id": "spring.L", "kind": "coil-spring", "mirror": "spring.R", "measures": [ { "id": "m", "kind": "length", "dimension": "free-length", "values": ["10.50"] } ] },
            { "id": "spring.R", "kind": "coil-spring", "mirror": "spring.L", "measures": [ { "id": "m", "kind": "length", "dimension": "free-length", "values": ["10.00"] } ] }
            """;
        const string Book = """
            { "id": "s", "kind": "coil-spring", "name": "front spring", "dimensions": [ { "dimension": "free-length", "nominal": "10.50", "tolerance": "0.10" } ] }
            """;
        var answer = BenchInspection.Of(BenchFiles.Car(Springs, Book));
        Assert.Equal([Disposition.Keep, Disposition.Replace], answer.Parts.Select(p => p.Disposition));
        Assert.Contains("The spring is tired or of another sort: renew springs in pairs.", answer.Parts[1].Reasons);
        Assert.Contains(answer.Parts[1].Reminders, r => r.Contains("compressed spring", StringComparison.Ordinal));
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

    private static string Lever(string pad, string? length) =>
        $$"""
            { "id": "p", "kind": "steering-lever", "made": "forged", "measures": [
              { "id": "m", "kind": "length", "dimension": "pad-height", "values": ["{{pad}}"], "tool": "caliper" }
              {{(
                length is null
                    ? ""
                    : $$""", { "id": "n", "kind": "length", "dimension": "arm-length", "values": ["{{length}}"], "tool": "caliper" }"""
            )}} ] }
            """;

    private static string Arm(string made, string gap, string kind = "lower-wishbone", string condition = "") =>
        $$"""
            { "id": "arm", "kind": "{{kind}}", "made": {{(made.Length == 0 ? "null" : $"\"{made}\"")}}, "condition": [ {{condition}} ],
              "limits": [ { "dimension": "flange", "within": "1/32" } ],
              "measures": [ { "id": "m", "kind": "straightedge", "dimension": "flange", "tool": "feeler",
                              "gaps": [ { "at": 0, "gap": 0 }, { "at": 5, "gap": "{{gap}}" }, { "at": 10, "gap": 0 } ] } ] }
            """;

    private const string Rods = """
        { "id": "r", "kind": "rods", "from": "front", "to": "rear", "span": 6, "near": "9.01", "far": "9.013", "tool": "micrometer" }
        """;

    private const string Flange = """
        { "id": "f", "kind": "straightedge", "dimension": "flange", "tool": "feeler", "gaps": [ { "at": 0, "gap": 0 }, { "at": 5, "gap": ".003" }, { "at": 10, "gap": 0 } ] }
        """;

    /// <summary>A straight pressed arm of which everything was measured that a bench can see.</summary>
    private static CarFile WholeArm(string condition = "") =>
        BenchFiles.Car(
            $$"""
            { "id": "arm", "kind": "lower-wishbone", "made": "pressed", "condition": [ {{condition}} ], "measures": [ {{Rods}}, {{Flange}},
              { "id": "m", "kind": "length", "dimension": "eye-height", "values": ["2.003"], "tool": "caliper" } ] }
            """,
            """{ "id": "arm", "kind": "lower-wishbone", "name": "lower arm", "dimensions": [ { "dimension": "eye-height", "nominal": "2.00", "tolerance": "1/32" } ] }"""
        );

    private static string Eyes(string left, string right) =>
        string.Join(
            ", ",
            new[] { ("L", "R", left), ("R", "L", right) }.Select(p =>
                $$"""
                    { "id": "arm.{{p.Item1}}", "kind": "lower-wishbone", "made": "pressed", "mirror": "arm.{{p.Item2}}",
                      "measures": [ { "id": "m", "kind": "length", "dimension": "eye-height", "values": ["{{p.Item3}}"], "tool": "caliper" }, {{Rods}}, {{Flange}} ] }
                    """
            )
        );
}
