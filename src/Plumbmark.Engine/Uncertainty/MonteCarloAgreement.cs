namespace Plumbmark.Engine.Uncertainty;

/// <summary>Whether linear propagation may be trusted in a given case: do its ends agree with Monte Carlo's?</summary>
/// <remarks>JCGM 101:2008, clause 8, with the numerical tolerance of 7.9.2. All arguments in the result's own unit.</remarks>
public static class MonteCarloAgreement
{
    /// <summary>δ, half of the last digit of u written with so many significant digits: u = c·10ˡ with c a whole number, δ = ½·10ˡ.</summary>
    /// <param name="standardUncertainty">u, positive.</param>
    /// <param name="significantDigits">One or two, usually.</param>
    public static double Tolerance(double standardUncertainty, int significantDigits)
    {
        Demand.Positive(standardUncertainty);
        Demand.Finite(standardUncertainty);
        ArgumentOutOfRangeException.ThrowIfLessThan(significantDigits, 1);
        var l = (int)Math.Floor(Math.Log10(standardUncertainty)) - significantDigits + 1;
        // 9.96 to two digits is 10, which is 1.0 with one digit less behind.
        var roundsUp = Math.Round(standardUncertainty / Math.Pow(10, l), MidpointRounding.AwayFromZero) >= Math.Pow(10, significantDigits);
        return 0.5 * Math.Pow(10, roundsUp ? l + 1 : l);
    }

    /// <summary>Whether both ends agree: |y − U − y_low| ≤ δ and |y + U − y_high| ≤ δ (8.1, eqs. (18) and (19)).</summary>
    /// <param name="linear">The interval y ± U of linear propagation.</param>
    /// <param name="monteCarlo">The interval of the trials for the same coverage.</param>
    /// <param name="tolerance">δ.</param>
    public static bool Holds(CoverageInterval linear, CoverageInterval monteCarlo, double tolerance) =>
        Math.Abs(linear.Low - monteCarlo.Low) <= tolerance && Math.Abs(linear.High - monteCarlo.High) <= tolerance;
}
