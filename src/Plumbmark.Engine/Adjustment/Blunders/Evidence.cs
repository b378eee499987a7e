namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>How likely the readings are under a hypothesis, compared with "nothing is wrong".</summary>
/// <remarks>
/// <para>Legend: I - what is left out (one or two numbers); d - observed minus what the rest predicts - m; S - covariance of that prediction plus the
/// readings' own - m²; T - diagonal, variance of a free error - m²; vPv - weighted sum of squares; f - redundancy; h - hypothesis; 0 - nothing wrong.</para>
/// <para>The rest of the readings and the prediction of the left-out ones give together the misfit Q_h = vPv₋ᵢ + dᵀ (S_h + T)⁻¹ d, where d and S_h belong to the reading as
/// it was meant. An exact slip has T = 0 and pays nothing for its amount; a free error pays ½ ln |1 + T S⁻¹|, Occam's factor. Flat priors on coordinates
/// cancel. Source: any text on Bayesian model comparison, such as MacKay, Information Theory, Inference, and Learning Algorithms, 2003, chapter 28 (from
/// memory).</para>
/// <para>The stated sigmas are themselves believed to a quarter only (ν₀ = 8 degrees of freedom). With the variance factor integrated out,
/// ln K = ½ ln |S| − ½ ln |S_h + T| + ½ (ν₀ + f) (ln (ν₀ + Q₀) − ln (ν₀ + Q_h)): where all readings scatter twice as much as stated, no single one is accused for it.</para>
/// </remarks>
/// <param name="misfit">Q₀, of the fit with all readings.</param>
/// <param name="redundancy">f.</param>
internal sealed class Evidence(double misfit, double redundancy)
{
    /// <summary>ln K for one left-out number.</summary>
    /// <param name="rest">vPv of the rest.</param>
    /// <param name="s">S of the reading as entered.</param>
    /// <param name="d">Observed − predicted, as meant.</param>
    /// <param name="sMeant">S as meant.</param>
    /// <param name="t">Variance of a free error.</param>
    public double Of(double rest, double s, double d, double sMeant, double t) =>
        0.5 * Math.Log(s / (sMeant + t)) + Misfit(rest + d * d / (sMeant + t));

    /// <summary>ln K for two left-out numbers; matrices as (xx, xy, yy).</summary>
    public double Of(
        double rest,
        (double XX, double XY, double YY) s,
        (double X, double Y) d,
        (double XX, double XY, double YY) sMeant,
        (double X, double Y) t
    )
    {
        var (a, b, c) = (sMeant.XX + t.X, sMeant.XY, sMeant.YY + t.Y);
        var determinant = a * c - b * b;
        var own = s.XX * s.YY - s.XY * s.XY;
        var square = (c * d.X * d.X - 2 * b * d.X * d.Y + a * d.Y * d.Y) / determinant;
        return 0.5 * Math.Log(own / determinant) + Misfit(rest + square);
    }

    /// <summary>ln of the mean of exp(values): the evidence averaged over sizes of a free error.</summary>
    public static double Mean(IReadOnlyList<double> values) => Sum(values) - Math.Log(values.Count);

    /// <summary>ln Σ exp(values), without overflow.</summary>
    public static double Sum(IEnumerable<double> values)
    {
        var list = values.ToList();
        var largest = list.Count > 0 ? list.Max() : double.NegativeInfinity;
        return double.IsFinite(largest) ? largest + Math.Log(list.Sum(v => Math.Exp(v - largest))) : largest;
    }

    private double Misfit(double under)
    {
        const double Believed = RepeatedDrops.DefaultDegreesOfFreedom;
        return 0.5 * (Believed + redundancy) * Math.Log((Believed + misfit) / (Believed + under));
    }
}
