using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Tests.Bench.WrittenParts;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>One side held against the other: which of two is bent cannot be told from their difference alone.</summary>
public class LeftAgainstRightTests
{
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
}
