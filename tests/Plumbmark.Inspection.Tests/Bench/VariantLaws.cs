using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>What must hold of every recognition; how often it is right is counted over 20,000 parts in bench/results/bench.txt.</summary>
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
        var answer = VariantIdentification.Of(Lever, [], [s_two[0] with { Serials = new SerialRange(null, SerialNumber.Read("TX 99")) }, s_two[1]], "TX 42")!;
        // 4 to 1 by the serial number, times 0.99 that it is one of these, times 0.95 that it is straight.
        Assert.Equal(0.8 * 0.99 * 0.95, answer.Odds[0].Straight, 1e-9);
        Assert.Equal("early", answer.Odds[0].Variant.Id);
        Assert.Equal("pad-height", Assert.Single(answer.LookAlikes).MeasureNext);
    }

    [Fact]
    public void FiveMillimetresApart_AtThreeTenths_AreSeparated()
    {
        var random = new Random(11);
        var ahead = 0;
        for (var i = 0; i < 400; i++)
        {
            var pad = 36 + (0.3 * Gaussian(random)) + (0.4 * ((2 * random.NextDouble()) - 1));
            var answer = Recognise([Measured("pad-height", pad, 0.3)]);
            ahead += answer.Odds.MaxBy(o => o.Straight + o.Bent)!.Variant.Id == "early" ? 1 : 0;
        }

        Assert.True(ahead >= 396, $"{ahead} of 400");
    }

    [Fact]
    public void BentByAHinge_TwoDimensions_IsNotTakenForTheOther()
    {
        var random = new Random(12);
        var mistaken = 0;
        for (var i = 0; i < 400; i++)
        {
            var (moved, plane) = (
                (1 + (5 * random.NextDouble())) * Math.PI / 180 * (40 + (80 * random.NextDouble())),
                2 * Math.PI * random.NextDouble()
            );
            var answer = Recognise([
                Measured("pad-height", 36 + (moved * Math.Cos(plane)) + (0.3 * Gaussian(random)), 0.3),
                Measured("arm-length", 140 + (moved * Math.Sin(plane)) + (0.3 * Gaussian(random)), 0.3),
            ]);
            mistaken += answer.Odds.Single(o => o.Variant.Id == "late").Straight >= VariantAnswer.Recognised ? 1 : 0;
        }

        Assert.True(mistaken <= 20, $"{mistaken} of 400");
    }

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
