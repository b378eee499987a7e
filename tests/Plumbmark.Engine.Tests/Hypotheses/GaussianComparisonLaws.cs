using CsCheck;
using Plumbmark.Engine.Hypotheses;

namespace Plumbmark.Engine.Tests.Hypotheses;

public class GaussianComparisonLaws
{
    private const int Values = 8;

    // Millimetres in metres, as everywhere on a frame.
    private static readonly Gen<double[]> s_values = Gen.Double[-5e-3, 5e-3].Array[Values];

    // In thousandths and not nothing: a column of 1e-75 is no effect at all, and none is what the fit rightly answers to it.
    private static readonly Gen<double[]> s_column = Gen.Int[-1000, 1000].Select(i => i / 1000.0).Array[Values].Where(c => Dot(c, c) > 0.1);
    private static readonly Gen<double[,]> s_covariance = Gen.Double[-1e-3, 1e-3].Array2D[Values, Values].Select(Positive);

    // An effect along the nuisance cannot be told from it, and nearly along it only with fewer digits.
    private static Gen<(double[] R, double[,] V, double[] N, double[] D)> s_case =>
        Gen.Select(s_values, s_covariance, s_column, s_column)
            .Where((_, _, n, d) => Math.Abs(Dot(n, d)) < 0.95 * Math.Sqrt(Dot(n, n) * Dot(d, d)));

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();

    private static double[,] Positive(double[,] a)
    {
        var v = new double[Values, Values];
        for (var i = 0; i < Values; i++)
        {
            for (var j = 0; j < Values; j++)
            {
                v[i, j] = i == j ? 1e-7 : 0;
                for (var k = 0; k < Values; k++)
                {
                    v[i, j] += a[i, k] * a[j, k];
                }
            }
        }

        return v;
    }

    private static EffectFit FitOne(double[] r, double[,] v, double[] nuisance, double[] effect) =>
        new GaussianComparison(r, v, [nuisance]).Effects([effect]).Fit(0)!;

    [Fact]
    public void MovingAllValuesAlongTheNuisance_ChangesNothing() =>
        s_case.Sample(c =>
        {
            var moved = c.R.Zip(c.N, (r, n) => r + (0.3 * n)).ToArray();
            Assert.Equal(FitOne(c.R, c.V, c.N, c.D).Amounts[0], FitOne(moved, c.V, c.N, c.D).Amounts[0], 1e-7); // 0.1 µm after a motion of 0.3 m
        });

    [Fact]
    public void AFreeDatum_ChangesNothing() =>
        s_case.Sample(c =>
        {
            // What a free network does: an unknown common motion of any size is added to the covariance.
            var free = (double[,])c.V.Clone();
            for (var i = 0; i < Values; i++)
            {
                for (var j = 0; j < Values; j++)
                {
                    free[i, j] += 0.5 * c.N[i] * c.N[j];
                }
            }

            var (a, b) = (FitOne(c.R, c.V, c.N, c.D), FitOne(c.R, free, c.N, c.D));
            Assert.Equal(a.Amounts[0], b.Amounts[0], 1e-7);
            Assert.Equal(Math.Sqrt(a.Covariance[0, 0]), Math.Sqrt(b.Covariance[0, 0]), 1e-7);
        });

    [Fact]
    public void AnEffectThatIsThere_IsFoundExactly() =>
        s_case.Sample(c =>
        {
            var r = c.N.Zip(c.D, (n, d) => (0.02 * n) + (0.005 * d)).ToArray();
            Assert.Equal(0.005, FitOne(r, c.V, c.N, c.D).Amounts[0], 1e-8);
        });

    [Fact]
    public void ASecondEffect_NeverMakesTheFirstSurer_NorTheMisfitLarger() =>
        Gen.Select(s_case, s_column)
            .Sample(
                (c, second) =>
                {
                    var effects = new GaussianComparison(c.R, c.V, [c.N]).Effects([c.D, second]);
                    if (effects.Fit(0) is { } one && effects.Fit(0, 1) is { } two)
                    {
                        Assert.True(two.Covariance[0, 0] >= one.Covariance[0, 0] * (1 - 1e-9));
                        Assert.True(two.ChiSquareDrop >= one.ChiSquareDrop - 1e-6);
                    }
                }
            );

    [Fact]
    public void AnEffectAlongTheNuisance_IsNotSeen() =>
        s_case.Sample(c =>
        {
            var effects = new GaussianComparison(c.R, c.V, [c.N]).Effects([
                [.. c.N.Select(n => 2 * n)],
            ]);
            Assert.False(effects.IsSeen(0));
            Assert.Null(effects.Fit(0));
            Assert.Equal(double.PositiveInfinity, effects.UncertaintyAlone(0));
        });

    [Fact]
    public void TwoEffectsThatAreOne_AreNotToldApart() =>
        s_case.Sample(c => Assert.Null(new GaussianComparison(c.R, c.V, [c.N]).Effects([c.D, [.. c.D.Select(d => -3 * d)]]).Fit(0, 1)));

    [Fact]
    public void ACovarianceThatRoundingLeftShortOfPositive_IsMended_AndOneThatIsWrongIsNot()
    {
        // Three values that hang on one unknown place, known to 10 km: what is left beside it is less than the rounding of a square of that.
        double[] column = [1, 2, 3];
        var covariance = new double[3, 3];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                covariance[i, j] = 1e8 * column[i] * column[j] * (i == j ? 1 - 1e-12 : 1);
            }
        }

        var mended = new GaussianComparison(
            [0.01, -0.01, 0.02],
            covariance,
            [
                [1, 1, 1],
            ]
        );
        Assert.True(double.IsFinite(mended.ChiSquareOfNothing));
        Assert.Throws<ArgumentException>(() =>
            new GaussianComparison(
                [0.01, -0.01],
                new double[,]
                {
                    { 1, 2 },
                    { 2, 1 },
                },
                []
            )
        );
    }
}
