using System.Globalization;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Testing;

namespace Plumbmark.Engine.Tests.Uncertainty;

/// <summary>Printed tables, and a table of 25 digits computed with mpmath (reference/distributions).</summary>
public class DistributionPublished
{
    [Fact]
    public void Distributions_AgreeWithTwentyFiveDigitsToOnePartInATrillion()
    {
        var lines = File.ReadAllLines(Repository.PathTo("reference", "distributions", "distributions.csv")).Skip(1).ToArray();
        Assert.Equal(99, lines.Length);
        var worst = lines.Select(Score).MinBy(score => score.Digits);
        Assert.True(worst.Digits >= 12, $"{worst.Digits:F1} digits: {worst.Line}");
    }

    private static (double Digits, string Line) Score(string line)
    {
        var cells = line.Split(',');
        double Cell(int i) => double.Parse(cells[i], CultureInfo.InvariantCulture);
        var computed = cells[0] switch
        {
            "normal" => Normal.Cumulative(Cell(1)),
            "t-upper" => StudentT.UpperTail(Cell(1), Cell(2)),
            "chi-lower" => ChiSquare.Cumulative(Cell(1), Cell(2)),
            "chi-upper" => ChiSquare.UpperTail(Cell(1), Cell(2)),
            "f-upper" => FisherF.UpperTail(Cell(1), Cell(2), Cell(3)),
            "nc-upper" => NonCentralChiSquare.UpperTail(Cell(1), Cell(2), Cell(3)),
            _ => throw new InvalidDataException(line),
        };
        var expected = Cell(4);
        return (-Math.Log10(Math.Max(Math.Abs(computed - expected) / expected, 1e-16)), $"{line} computed {computed:R}");
    }

    // Any statistical table; recomputed independently.
    [Theory]
    [InlineData(0.90, 1.281552)]
    [InlineData(0.95, 1.644854)]
    [InlineData(0.975, 1.959964)]
    [InlineData(0.99, 2.326348)]
    [InlineData(0.999, 3.090232)]
    public void Normal_Quantile_AgreesWithTheTable(double p, double z) => Assert.Equal(z, Normal.Quantile(p), tolerance: 5e-7);

    // JCGM 100:2008 (GUM), table G.2, columns p = 95 % and 99 %, printed to two or three digits behind the point.
    [Theory]
    [InlineData(1, 12.706, 63.657)]
    [InlineData(2, 4.303, 9.925)]
    [InlineData(3, 3.182, 5.841)]
    [InlineData(4, 2.776, 4.604)]
    [InlineData(5, 2.571, 4.032)]
    [InlineData(8, 2.306, 3.355)]
    [InlineData(10, 2.228, 3.169)]
    [InlineData(16, 2.120, 2.921)]
    [InlineData(20, 2.086, 2.845)]
    [InlineData(50, 2.009, 2.678)]
    public void StudentT_CoverageFactor_AgreesWithTableG2(double nu, double t95, double t99)
    {
        Assert.Equal(t95, StudentT.CoverageFactor(0.95, nu), tolerance: 5.1e-4);
        Assert.Equal(t99, StudentT.CoverageFactor(0.99, nu), tolerance: 5.1e-4);
    }

    // Baarda 1968; the values are printed in every textbook of geodetic reliability. Recomputed independently.
    [Theory]
    [InlineData(0.001, 0.20, 4.1321)]
    [InlineData(0.01, 0.20, 3.4175)]
    [InlineData(0.05, 0.20, 2.8016)]
    [InlineData(0.001, 0.10, 4.5721)]
    public void Baarda_Delta0_AgreesWithTheTextbooks(double alpha, double beta, double delta0) =>
        Assert.Equal(delta0, BaardaReliability.Delta0(alpha, beta), tolerance: 5.1e-5);

    [Fact]
    public void Baarda_Lambda0AndCriticalValue_AgreeWithTheTextbooks()
    {
        Assert.Equal(17.0746, BaardaReliability.Lambda0(0.001, 0.20, 1), tolerance: 5.1e-4); // printed from δ₀ of four digits
        Assert.Equal(3.2905, BaardaReliability.CriticalValue(0.001), tolerance: 5.1e-5);
    }

    // Abramowitz & Stegun table 26.8 (chi-square) and 26.9 (F), upper 5 % and 1 %; from memory, recomputed independently.
    [Theory]
    [InlineData(1, 3.84146, 6.63490)]
    [InlineData(2, 5.99146, 9.21034)]
    [InlineData(10, 18.3070, 23.2093)]
    [InlineData(30, 43.7730, 50.8922)]
    public void ChiSquare_UpperQuantile_AgreesWithTheTable(double nu, double at5, double at1)
    {
        Assert.Equal(at5, ChiSquare.UpperQuantile(0.05, nu), tolerance: 6e-5);
        Assert.Equal(at1, ChiSquare.UpperQuantile(0.01, nu), tolerance: 6e-5);
    }

    [Theory]
    [InlineData(1, 1, 161.45)]
    [InlineData(2, 10, 4.10)]
    [InlineData(5, 5, 5.05)]
    [InlineData(10, 20, 2.35)]
    public void FisherF_UpperQuantile_AgreesWithTheTable(double above, double below, double at5) =>
        Assert.Equal(at5, FisherF.UpperQuantile(0.05, above, below), tolerance: 5.1e-3);
}
