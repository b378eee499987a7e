using CsCheck;
using Plumbmark.Engine.Hypotheses;

namespace Plumbmark.Engine.Tests.Hypotheses;

public class RobustLinearFitLaws
{
    private const double Sigma = 0.5e-3;

    private static readonly double[] s_x = [1.2, 0.8, 0.3, -0.1, -0.7, -1.2, -1.5];

    private static RobustLinearFit Line(double[] values)
    {
        var noise = new double[s_x.Length, s_x.Length];
        for (var i = 0; i < s_x.Length; i++)
        {
            noise[i, i] = Sigma * Sigma;
        }

        return new RobustLinearFit(values, noise, [.. s_x.Select(x => new[] { 1, x })], [.. Enumerable.Range(0, s_x.Length)], 0.4e-3);
    }

    private static double[] Theta(RobustLinearFit fit, double[] values) =>
        [.. Enumerable.Range(0, 2).Select(p => values.Select((v, r) => fit.Estimator![p, r] * v).Sum())];

    [Fact]
    public void ThreeWildValuesOfSeven_HaveNoSay() =>
        Gen.Select(
                Gen.Double[-3, 3].Array[s_x.Length],
                Gen.Double[8e-3, 0.5].Array[3],
                Gen.Bool.Array[3],
                Gen.Shuffle(Enumerable.Range(0, 7).ToArray())
            )
            .Sample(
                (noise, sizes, signs, order) =>
                {
                    // Noise within three sigma, a line of its own, and three values off by 8 mm to half a metre, not all alike.
                    var values = s_x.Select((x, i) => 0.01 + (0.02 * x) + (Sigma * noise[i] / 3)).ToArray();
                    for (var k = 0; k < 3; k++)
                    {
                        values[order[k]] += (signs[k] ? 1 : -1) * (sizes[k] + (0.02 * k));
                    }

                    var fit = Line(values);
                    Assert.True(fit.Solve());
                    var line = Theta(fit, values);
                    Assert.All(order.Skip(3), i => Assert.True(Math.Abs(values[i] - line[0] - (line[1] * s_x[i])) < 3e-3));
                },
                iter: 300
            );

    [Fact]
    public void TheEstimatorOfAGroup_GivesItNoSay()
    {
        var values = s_x.Select(x => 0.01 * x).ToArray();
        var fit = Line(values);
        Assert.True(fit.Solve());
        var without = fit.EstimatorWithout(2)!;
        Assert.Equal(0, without[0, 2]);
        Assert.Equal(0, without[1, 2]);
    }

    [Fact]
    public void TheEstimator_GivesBackAnyLine() =>
        Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1])
            .Sample(
                (a, b) =>
                {
                    var values = s_x.Select(x => a + (b * x)).ToArray();
                    var fit = Line(values);
                    Assert.True(fit.Solve());
                    var line = Theta(fit, values);
                    Assert.Equal(a, line[0], 1e-12);
                    Assert.Equal(b, line[1], 1e-12);
                }
            );

    [Fact]
    public void AllAtOnePlace_FixNoLine()
    {
        var noise = new double[3, 3];
        (noise[0, 0], noise[1, 1], noise[2, 2]) = (1e-6, 1e-6, 1e-6);
        var fit = new RobustLinearFit(
            [0, 0, 0],
            noise,
            [
                [1, 0.5],
                [1, 0.5],
                [1, 0.5],
            ],
            [0, 1, 2],
            0
        );
        Assert.False(fit.Solve());
        Assert.Null(fit.Estimator);
    }
}
