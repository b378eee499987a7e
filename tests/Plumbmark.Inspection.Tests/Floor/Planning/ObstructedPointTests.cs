using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Inspection.Tests.Floor.Planning;

/// <summary>A point that the plumb line does not reach: the ways round, exactly the numbers each asks for, and what it costs.</summary>
public class ObstructedPointTests
{
    private static readonly CarFile s_car = CarFile.Named("Obstructed", LengthUnit.Inch) with
    {
        Frame = new Frame(
            [.. FrameSkeleton.Ladder(6, LengthUnit.Inch).Select(p => p.Id == "C.L" ? p with { CannotDrop = true } : p)],
            null
        ),
    };

    // A drop is good to 0.5 mm each axis (design 4.2), what each way adds is common practice without source: 0.3 mm for two drops equally far to
    // either side, 0.5 mm for a measured offset, 0.5 mm for a bar. Own computation: sqrt(0.5²/2 + 0.3²), sqrt(0.5² + 0.5²).
    [Theory]
    [InlineData("midpoint", 0.4637)]
    [InlineData("offset", 0.7071)]
    [InlineData("bar", 0.7071)]
    [InlineData("move-stand", 0.5)]
    public void EachWay_CostsWhatItsErrorsAddUpTo(string way, double millimetres)
    {
        var proposal = ObstructedPoint.For(s_car, "C.L").Single(p => p.Way == way);
        Assert.Equal(millimetres, proposal.UMetres * 1000, 5e-4); // printed to four digits
        Assert.Equal(0.5, proposal.PlainUMetres * 1000, 1e-9);
    }

    [Fact]
    public void Ways_ComeSurestFirst_AndMovingTheStandLast()
    {
        var ways = ObstructedPoint.For(s_car, "C.L");
        Assert.Equal("move-stand", ways[^1].Way);
        Assert.Equal(ways.SkipLast(1).Select(w => w.UMetres).Order(), ways.SkipLast(1).Select(w => w.UMetres));
    }

    [Fact]
    public void EachWay_AsksForExactlyItsNumbers()
    {
        var ways = ObstructedPoint.For(s_car, "C.L").ToDictionary(w => w.Way, w => w.Asks, StringComparer.Ordinal);
        Assert.Equal(2, ways["midpoint"].Count);
        Assert.Equal(3, ways["offset"].Count);
        Assert.Contains(
            ways["offset"],
            a => a.Contains("forward", StringComparison.Ordinal) && a.Contains("back", StringComparison.Ordinal)
        );
        Assert.Contains(ways["offset"], a => a.Contains("left", StringComparison.Ordinal) && a.Contains("right", StringComparison.Ordinal));
        Assert.Equal(3, ways["bar"].Count);
        Assert.Equal(4, ways["trammel"].Count); // three lengths, and the heights of all four
        Assert.Empty(ways["move-stand"]);
    }

    [Fact]
    public void TheTrammel_IsSetFromPointsThatCanBeDropped_AndCostsWhatThreeLengthsLeave()
    {
        var trammel = ObstructedPoint.For(s_car, "C.L").Single(p => p.Way == "trammel");
        Assert.DoesNotContain("from C.L", trammel.Asks[0], StringComparison.Ordinal);

        // Three lengths at best share the circle: cov = (Σ a aᵀ)⁻¹ σ² has σ² 2/3 on each axis where they stand at 120 degrees, and σ is a length of
        // two ends of 0.5 mm with the far point's drop of 0.5 mm (own computation): no better than that can it be.
        var best = Math.Sqrt((2 * 0.25) + 0.25) * Math.Sqrt(2.0 / 3);
        Assert.InRange(trammel.UMetres * 1000, best * 0.99, best * 2);
    }

    [Fact]
    public void ACentrePoint_HasNoBar() =>
        Assert.DoesNotContain(
            ObstructedPoint.For(s_car with { Frame = new Frame([new FramePoint("N", CannotDrop: true)], null) }, "N"),
            p => p.Way == "bar"
        );

    [Fact]
    public void AnUnknownPoint_HasNoWays() => Assert.Empty(ObstructedPoint.For(s_car, "Z.L"));
}
