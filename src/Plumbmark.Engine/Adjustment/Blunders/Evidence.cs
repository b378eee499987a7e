namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>How likely left-out readings are under a hypothesis, compared with "nothing is wrong".</summary>
/// <remarks>
/// <para>Legend: I - what is left out (one or two numbers); d - observed minus what the rest predicts - m; S - covariance of that prediction plus the
/// readings' own - m²; T - diagonal, variance of a free error - m²; vPv - weighted sum of squares.</para>
/// <para>The rest of the readings has the evidence exp(−½ vPv₋ᵢ), the left-out ones the density N(d; 0, S + T) they were predicted with. Against the fit
/// with all readings: ln K = ½ (vPv − vPv₋ᵢ) + ½ ln |S| − ½ ln |S_h + T| − ½ dᵀ (S_h + T)⁻¹ d, where S_h and d belong to the reading as it was meant. An exact
/// slip has T = 0 and pays nothing for its amount; a free error pays ½ ln (1 + T / S), Occam's factor. Flat priors on coordinates cancel. Source: any text on Bayesian
/// model comparison, such as MacKay, Information Theory, Inference, and Learning Algorithms, 2003, chapter 28 (from memory).</para>
/// </remarks>
internal static class Evidence
{
    /// <summary>ln K for one left-out number.</summary>
    public static double Of(double gain, double s, double d, double sMeant, double t) =>
        0.5 * gain + 0.5 * Math.Log(s / (sMeant + t)) - 0.5 * d * d / (sMeant + t);

    /// <summary>ln K for two left-out numbers; matrices as (xx, xy, yy).</summary>
    public static double Of(
        double gain,
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
        return 0.5 * gain + 0.5 * Math.Log(own / determinant) - 0.5 * square;
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
}
