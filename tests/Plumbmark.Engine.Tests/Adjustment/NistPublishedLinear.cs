using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>
/// NIST/ITL Statistical Reference Datasets, linear regression, through the project's QR; scored in agreeing digits of the certified values
/// (which have fifteen), with a floor for each set.
/// </summary>
public class NistPublishedLinear
{
    // Digits of the estimates, of the refined estimates, of their standard deviations, and of the residual standard deviation. A double has 16; what the condition of
    // the design takes (Longley 2e4, the fifth powers of Wampler 1e3, the tenth powers of Filip 1e9, all as bounds from below) is gone, and in Wampler3 to 5
    // what the noise takes, which is made up to ten thousand times the signal. Wampler1 and 2 fit exactly: certified deviations zero.
    [Theory]
    [InlineData("Norris", 12, 13, 13, 13)]
    [InlineData("Pontius", 11, 13, 12, 12)] // 11.97
    [InlineData("NoInt1", 14, 14, 14, 14)]
    [InlineData("NoInt2", 14, 14, 14, 14)]
    [InlineData("Longley", 11, 13, 12, 12)] // 11.9
    [InlineData("Filip", 7, 7, 6, 7)]
    [InlineData("Wampler1", 9, 14, 9, 9)]
    [InlineData("Wampler2", 12, 12, 13, 13)]
    [InlineData("Wampler3", 9, 14, 12, 14)]
    [InlineData("Wampler4", 7, 14, 12, 14)]
    [InlineData("Wampler5", 5, 14, 12, 14)]
    public void Qr_AgreesWithTheCertifiedValues(string name, int estimates, int refined, int deviations, int residual)
    {
        var set = NistDataSet.Read(name);
        var (m, n) = (set.Observed.Length, set.Parameters.Length);
        var design = DesignMatrix(set);
        var factor = PivotedQr.Of(design, m, n);
        Assert.Equal(n, factor.Rank);

        var x = factor.Solve(set.Observed);
        var left = Enumerable.Range(0, m).Select(i => set.Observed[i] - Enumerable.Range(0, n).Sum(j => design[i * n + j] * x[j]));
        var s = Math.Sqrt(left.Sum(v => v * v) / (m - n));
        var gram = factor.InverseGram();
        var deviation = Enumerable.Range(0, n).Select(j => s * Math.Sqrt(gram[j * n + j]));
        var certified = set.Parameters.Select(p => p.Estimate).ToArray();
        AtLeast(estimates, NistDataSet.AgreeingDigits(certified, x), "estimates");
        AtLeast(refined, NistDataSet.AgreeingDigits(certified, RefinedSolution.Of(factor, design, set.Observed)), "refined estimates");
        AtLeast(deviations, NistDataSet.AgreeingDigits(set.Parameters.Select(p => p.Deviation), deviation), "standard deviations");
        AtLeast(residual, NistDataSet.AgreeingDigits([set.ResidualDeviation], [s]), "residual standard deviation");

        void AtLeast(int floor, double digits, string what) => Assert.True(digits >= floor, $"{name}, {what}: {digits:F1} digits");
    }

    private static double[] DesignMatrix(NistDataSet set) =>
        [
            .. set.Places.SelectMany(x =>
                set.Name switch
                {
                    "NoInt1" or "NoInt2" => x,
                    "Longley" => [1, .. x],
                    _ => Powers(x[0], set.Parameters.Length),
                }
            ),
        ];

    // By multiplication, which rounds alike everywhere.
    private static double[] Powers(double x, int count)
    {
        var powers = new double[count];
        powers[0] = 1;
        for (var i = 1; i < count; i++)
        {
            powers[i] = powers[i - 1] * x;
        }

        return powers;
    }
}
