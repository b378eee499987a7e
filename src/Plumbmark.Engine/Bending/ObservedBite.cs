using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Bending;

/// <summary>One bite as measured at the press; what the theory says of one is <see cref="Bite"/>.</summary>
/// <param name="TravelMetres">Travel of the ram from touching the part as it stood, m.</param>
/// <param name="SetBeforeMetres">Set of all bites before this one, m; 0 for the first.</param>
/// <param name="SetMetres">Set of this bite after release, m; a little below 0 is reading error.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct ObservedBite(double TravelMetres, double SetBeforeMetres, double SetMetres)
{
    /// <summary>Travel that came back: the spring-back, or only a lower bound of it while nothing has set, m.</summary>
    public double CameBackMetres => TravelMetres - SetMetres;
}
