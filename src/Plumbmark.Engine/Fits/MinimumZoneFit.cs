using System.Collections.Immutable;

namespace Plumbmark.Engine.Fits;

/// <summary>The shape about which the band that holds every point is narrowest.</summary>
/// <typeparam name="TShape">For example <see cref="Plane"/>.</typeparam>
/// <remarks>
/// This is what a drawing means by straightness, flatness or roundness (ISO 1101), and what feelers under a straightedge show. It listens to
/// the worst points only, so one bad reading moves it; the least-squares shape listens to all of them.
/// </remarks>
/// <param name="Shape">The shape in the middle of the band.</param>
/// <param name="ZoneMetres">Width of the band, metres; for a line in space the diameter of the tube.</param>
/// <param name="Contacts">Numbers of the points that touch the band's two sides and so decide it.</param>
/// <param name="Sensitivity">
/// Standard uncertainty of the width for points of standard uncertainty 1, as long as the same points touch. A width of pure reading noise is
/// never zero: compare it with what noise alone would give before calling it a bend.
/// </param>
public sealed record MinimumZoneFit<TShape>(TShape Shape, double ZoneMetres, ImmutableArray<int> Contacts, double Sensitivity);
