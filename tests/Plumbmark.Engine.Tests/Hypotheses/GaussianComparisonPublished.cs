using System.Globalization;
using Plumbmark.Engine.Hypotheses;
using Plumbmark.Testing;

namespace Plumbmark.Engine.Tests.Hypotheses;

/// <summary>A straight line is one effect (the slope) beside one nuisance (the intercept): NIST's certified lines must come out.</summary>
public class GaussianComparisonPublished
{
    // NIST StRD, linear regression, Norris: certified slope, its standard deviation and the residual standard deviation.
    private const double Slope = 1.00211681802045;
    private const double SlopeDeviation = 0.429796848199937e-3;
    private const double ResidualDeviation = 0.884796396144373;
    private const double ResidualSumOfSquares = 26.6173985294224;

    [Fact]
    public void Norris_SlopeAndItsUncertainty_AreTheCertifiedOnes()
    {
        var (x, y) = Norris();
        var comparison = new GaussianComparison(
            y,
            Diagonal(y.Length, 1),
            [
                [.. x.Select(_ => 1.0)],
            ]
        );
        var fit = comparison.Effects([x]).Fit(0)!;
        Assert.Equal(Slope, fit.Amounts[0], 1e-9); // ten digits; the certified data are worth about that in double arithmetic
        Assert.Equal(SlopeDeviation / ResidualDeviation, Math.Sqrt(fit.Covariance[0, 0]), 1e-10);
        Assert.Equal(ResidualSumOfSquares, comparison.ChiSquareOfNothing - fit.ChiSquareDrop, 1e-4); // a difference of 4e6: nine digits
        Assert.Equal(35, comparison.Freedom);
    }

    [Fact]
    public void Norris_SlopeAsWeightedSum_IsTheSame()
    {
        var (x, y) = Norris();
        var comparison = new GaussianComparison(
            y,
            Diagonal(y.Length, 1),
            [
                [.. x.Select(_ => 1.0)],
            ]
        );
        var weights = comparison.WeightsOf(x)!;
        Assert.Equal(Slope, weights.Zip(y, (w, v) => w * v).Sum(), 1e-9);
    }

    private static double[,] Diagonal(int n, double variance)
    {
        var matrix = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            matrix[i, i] = variance;
        }

        return matrix;
    }

    private static (double[] X, double[] Y) Norris()
    {
        var rows = File.ReadLines(Repository.PathTo("reference", "nist", "Norris.dat"))
            .SkipWhile(l => !l.StartsWith("Data:       y", StringComparison.Ordinal))
            .Skip(1)
            .Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Where(f => f.Length == 2)
            .Select(f => (Y: double.Parse(f[0], CultureInfo.InvariantCulture), X: double.Parse(f[1], CultureInfo.InvariantCulture)))
            .ToList();
        Assert.Equal(36, rows.Count);
        return ([.. rows.Select(r => r.X)], [.. rows.Select(r => r.Y)]);
    }
}
