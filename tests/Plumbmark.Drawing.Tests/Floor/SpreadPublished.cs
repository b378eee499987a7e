namespace Plumbmark.Drawing.Floor;

public sealed class SpreadPublished
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, upper critical values of chi-square: 2 degrees of freedom, 0.95: 5.991.
    private const double ChiSquare95 = 5.991;

    [Fact]
    public void Ellipse95_Uncorrelated_HasTheTabledAxes()
    {
        var (along, across, turn) = new Spread(9e-6, 4e-6, 0).Ellipse95();
        Assert.Equal(0.003 * Math.Sqrt(ChiSquare95), along, 1e-6); // the table is printed to three decimals
        Assert.Equal(0.002 * Math.Sqrt(ChiSquare95), across, 1e-6);
        Assert.Equal(0, turn, 1e-12);
    }

    // Own computation: covariance [[5, 3], [3, 5]] has eigenvalues 8 and 2 with axes at ±45 degrees.
    [Fact]
    public void Ellipse95_Correlated_IsTurned()
    {
        var (along, across, turn) = new Spread(5, 5, 3).Ellipse95();
        Assert.Equal(8 * ChiSquare95, along * along, 0.01); // table digits
        Assert.Equal(2 * ChiSquare95, across * across, 0.01);
        Assert.Equal(Math.PI / 4, turn, 1e-12);
    }
}
