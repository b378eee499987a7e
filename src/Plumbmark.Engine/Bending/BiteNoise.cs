namespace Plumbmark.Engine.Bending;

/// <summary>How well travel and set are read, as standard uncertainties (k = 1).</summary>
/// <param name="TravelMetres">Of a travel, m.</param>
/// <param name="StraightnessMetres">Of one reading of how far the part is from straight, m; a set is the difference of two.</param>
public sealed record BiteNoise(double TravelMetres, double StraightnessMetres)
{
    /// <summary>Standard uncertainty of a spring-back got from one travel and two readings of straightness, m.</summary>
    public double CameBackMetres => Math.Sqrt((TravelMetres * TravelMetres) + (2 * StraightnessMetres * StraightnessMetres));
}
