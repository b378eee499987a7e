using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>What must hold of every recognition; how often it is right is counted over 100,000 parts a row in bench/results/bench.txt.</summary>
public class VariantLaws
{
    private static readonly PartVariant[] s_two = [Type("early", 36), Type("late", 31)];

    private static readonly Gen<IReadOnlyList<DimensionValue>> s_measured = Gen.Select(
        Gen.Double[20, 50],
        Gen.Double[130, 150],
        Gen.Double[0.01, 2],
        (pad, length, u) => (IReadOnlyList<DimensionValue>)[Measured("pad-height", pad, u), Measured("arm-length", length, u)]
    );

    [Fact]
    public void Probabilities_AddUpToOne() =>
        s_measured.Sample(
            measured =>
            {
                var answer = Recognise(measured);
                Assert.Equal(1, answer.Odds.Sum(o => o.Straight) + answer.NoneOrBent, 1e-9);
                Assert.All(answer.Odds, o => Assert.InRange(o.Straight + o.Bent, 0, 1));
            },
            iter: 500
        );

    [Fact]
    public void OrderOfVariantsAndDimensions_DoesNotMatter() =>
        s_measured.Sample(
            measured =>
            {
                var forwards = Recognise(measured);
                var backwards = VariantIdentification.Of(Lever, [.. measured.Reverse()], [.. s_two.Reverse()], null)!;
                Assert.Equal(forwards.NoneOrBent, backwards.NoneOrBent, 1e-12);
                Assert.Equal(forwards.Odds[0].Straight, backwards.Odds[0].Straight, 1e-12);
            },
            iter: 300
        );

    [Fact]
    public void FartherFromBoth_IsMoreLikelyNone() =>
        Gen.Double[0.05, 0.5]
            .Sample(
                u =>
                {
                    double None(double pad) => Recognise([Measured("pad-height", pad, u), Measured("arm-length", 140, u)]).NoneOrBent;
                    Assert.True(None(36) < None(38) && None(38) < None(40));
                    Assert.True(None(60) > 0.999);
                },
                iter: 100
            );

    [Fact]
    public void HugeDeviations_GiveNumbersAndNotNothing()
    {
        var answer = Recognise([Measured("pad-height", 36e6, 0.001), Measured("arm-length", 140, 0.001)]);
        Assert.Equal(1, answer.NoneOrBent, 1e-9);
        Assert.All(answer.Odds, o => Assert.True(double.IsFinite(o.Straight) && double.IsFinite(o.Bent)));
    }

    [Fact]
    public void NothingMeasured_LeavesWhatTheSerialSays()
    {
        var answer = VariantIdentification.Of(
            Lever,
            [],
            [s_two[0] with { Serials = new SerialRange(null, SerialNumber.Read("TX 99")) }, s_two[1]],
            "TX 42"
        )!;
        // 4 to 1 by the serial number, times 0.99 that it is one of these, times 0.96 that it is straight.
        Assert.Equal(0.8 * 0.99 * 0.96, answer.Odds[0].Straight, 1e-9);
        Assert.Equal("early", answer.Odds[0].Variant.Id);
        Assert.Equal("pad-height", Assert.Single(answer.LookAlikes).MeasureNext);
    }

    [Fact]
    public void FiveMillimetresApart_AtThreeTenths_AreSeparatedByOneDimension()
    {
        var random = new Random(11);
        var (separated, ahead) = (0, 0);
        for (var i = 0; i < Parts; i++)
        {
            var pad = 36 + (0.3 * Gaussian(random)) + (0.4 * ((2 * random.NextDouble()) - 1));
            var answer = Recognise([Measured("pad-height", pad, 0.3)]);
            var (early, late) = (Of(answer, "early"), Of(answer, "late"));
            separated += early >= VariantAnswer.Recognised ? 1 : 0;
            ahead += early > late ? 1 : 0;
        }

        Assert.True(separated >= 0.99 * Parts, $"{separated} of {Parts}");
        Assert.Equal(Parts, ahead);
    }

    /// <summary>A part of the early type, bent, passes for the late one, straight or bent, in less than one case of twenty: bends as they happen, and bends aimed at the other type.</summary>
    [Theory]
    [InlineData("hinge")]
    [InlineData("aimed")]
    public void BentInAnyWay_TwoDimensions_IsNotTakenForTheOther(string bend)
    {
        var random = new Random(12);
        var mistaken = 0;
        for (var i = 0; i < Parts; i++)
        {
            var (pad, length) = bend == "hinge" ? Hinge(random) : Aimed(random);
            var answer = Recognise([
                Measured("pad-height", 36 + pad + (0.3 * Gaussian(random)), 0.3),
                Measured("arm-length", 140 + length + (0.3 * Gaussian(random)), 0.3),
            ]);
            mistaken += Of(answer, "late") >= VariantAnswer.Recognised ? 1 : 0;
        }

        Assert.True(mistaken <= 0.05 * Parts, $"{mistaken} of {Parts}");
    }

    // A lever bent by 1 to 6 degrees in any plane, 40 to 120 mm from its pad.
    private static (double Pad, double Length) Hinge(Random random)
    {
        var angle = (1 + (5 * random.NextDouble())) * Math.PI / 180;
        var moved = angle * (40 + (80 * random.NextDouble()));
        var plane = 2 * Math.PI * random.NextDouble();
        return (moved * Math.Cos(plane), (moved * Math.Sin(plane)) - (moved * angle / 2));
    }

    // The pad, the length, or both moved by 2 to 10 mm either way; the other type lies 5 mm below.
    private static (double Pad, double Length) Aimed(Random random)
    {
        double Moved() => (random.Next(2) == 0 ? 1 : -1) * (2 + (8 * random.NextDouble()));
        return random.Next(3) switch
        {
            0 => (Moved(), 0),
            1 => (0, Moved()),
            _ => (Moved(), Moved()),
        };
    }

    private const int Parts = 10_000;

    private static double Of(VariantAnswer answer, string variant) =>
        answer.Odds.Where(o => o.Variant.Id == variant).Sum(o => o.Straight + o.Bent);

    private static Part Lever { get; } = new("p", PartKind.SteeringLever);

    private static VariantAnswer Recognise(IReadOnlyList<DimensionValue> measured) =>
        VariantIdentification.Of(Lever, measured, s_two, null)!;

    private static PartVariant Type(string id, decimal pad) =>
        new(id, PartKind.SteeringLever, id, Figures: [Figure("pad-height", pad), Figure("arm-length", 140)]);

    private static BookFigure Figure(string dimension, decimal millimetres) =>
        new(dimension, new Amount.OfLength(Length.FromMillimetres(millimetres)), new Amount.OfLength(Length.FromMillimetres(0.4m)));

    private static DimensionValue Measured(string dimension, double millimetres, double u) =>
        new(dimension, Quantity.Length, DimensionNature.Shape, millimetres * 1e-3, u * 1e-3, 0, null, []);

    private static double Gaussian(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
