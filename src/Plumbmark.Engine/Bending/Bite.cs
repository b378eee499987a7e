namespace Plumbmark.Engine.Bending;

/// <summary>One stroke of the ram as the theory sees it; what really happened is an <see cref="ObservedBite"/>.</summary>
/// <param name="LoadNewtons">Largest load, N.</param>
/// <param name="TravelMetres">Travel of the ram from touching the part, m.</param>
/// <param name="SetMetres">What stays under the ram after release, m.</param>
/// <param name="CurvaturePerMetre">Largest curvature under the ram, 1/m.</param>
/// <param name="OuterStrain">Largest strain of an outermost fibre under load, without sign.</param>
/// <param name="RamSideStrain">Strain of the squeezed fibre under the ram, without sign.</param>
public sealed record Bite(
    double LoadNewtons,
    double TravelMetres,
    double SetMetres,
    double CurvaturePerMetre,
    double OuterStrain,
    double RamSideStrain
)
{
    /// <summary>The elastic part of the travel, m: what springs back.</summary>
    public double SpringBackMetres => TravelMetres - SetMetres;
}
