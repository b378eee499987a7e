using Plumbmark.Engine.Hypotheses;

namespace Plumbmark.Engine.Tests.Hypotheses;

/// <summary>
/// The classical example of robust regression: international calls from Belgium 1950 to 1973, of which six years were recorded in another unit
/// (Rousseeuw and Leroy, Robust Regression and Outlier Detection, 1987, table 2.2.2).
/// </summary>
public class RobustLinearFitPublished
{
    private static readonly double[] s_calls =
    [
        4.4,
        4.7,
        4.7,
        5.9,
        6.6,
        7.3,
        8.1,
        8.8,
        10.6,
        12.0,
        13.5,
        14.9,
        16.1,
        21.2,
        119,
        124,
        142,
        159,
        182,
        212,
        43,
        24,
        27,
        29,
    ];

    // Venables and Ripley, Modern Applied Statistics with S, 4th edition, section 6.5: the MM estimate (biweight, c = 4.685) is
    // calls = -52.423 + 1.1009 year with scale 2.129. Data and result from memory.
    private const double Scale = 2.129;
    private const double Intercept = -52.423;
    private const double Slope = 1.1009;

    [Fact]
    public void BelgianCalls_GiveThePublishedMmLine()
    {
        var n = s_calls.Length;
        var noise = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            noise[i, i] = Scale * Scale;
        }

        var design = Enumerable.Range(50, n).Select(year => new[] { 1.0, year }).ToArray();
        var fit = new RobustLinearFit(s_calls, noise, design, [.. Enumerable.Range(0, n)], 0);
        Assert.True(fit.Solve());
        var theta = Enumerable.Range(0, 2).Select(p => Enumerable.Range(0, n).Sum(r => fit.Estimator![p, r] * s_calls[r])).ToArray();
        Assert.Equal(Intercept, theta[0], 0.05); // the scale is printed to four digits, and the intercept lies fifty years off the data
        Assert.Equal(Slope, theta[1], 0.0008);
        Assert.All(Enumerable.Range(14, 6), year => Assert.Equal(0, fit.Weights[year]));
    }
}
