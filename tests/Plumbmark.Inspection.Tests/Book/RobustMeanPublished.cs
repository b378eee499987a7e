using CsCheck;
using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Tests.Book;

public class RobustMeanPublished
{
    // Copper in wholemeal flour, µg/g: Analytical Methods Committee, "Robust statistics", Analyst 114 (1989) 1693-1702; the data set "chem" of Venables
    // and Ripley, Modern Applied Statistics with S, 4th edition, section 5.5, which gives Huber's proposal 2 as 3.2055 and 0.6737. From memory.
    private static readonly double[] s_copper =
    [
        2.90,
        3.10,
        3.40,
        3.40,
        3.70,
        3.70,
        2.80,
        2.50,
        2.40,
        2.40,
        2.70,
        2.20,
        5.28,
        3.37,
        3.03,
        3.03,
        28.95,
        3.77,
        3.40,
        2.20,
        3.50,
        3.60,
        3.70,
        3.70,
    ];

    [Fact]
    public void Of_TheCopperData_GivesThePublishedRobustMeanAndSpread()
    {
        var mean = RobustMean.Of(s_copper)!;
        Assert.Equal(3.2055, mean.Mean, 0.01); // the factor 1.134 is rounded in the standard, 1/√0.7785 in the book
        Assert.Equal(0.6737, mean.Spread!.Value, 0.01);
        Assert.Equal(1.25 * mean.Spread.Value / Math.Sqrt(24), mean.MeanSigma!.Value, 1e-12);
    }

    [Fact]
    public void Of_OneOddCarAmongMany_HardlyMovesTheMean() =>
        Gen.Select(Gen.Int[-1000, 1000].Select(i => i / 1000d).List[7, 15], Gen.Double[20, 1000])
            .Sample(
                (values, odd) =>
                {
                    var without = RobustMean.Of(values)!;
                    var with = RobustMean.Of([.. values, odd])!;
                    Assert.True(Math.Abs(with.Mean - without.Mean) < 1, $"{without} {with}");
                    Assert.Equal(with.Mean + 7, RobustMean.Of([.. values.Append(odd).Select(v => v + 7)])!.Mean, 1e-6);
                },
                iter: 200
            );
}
