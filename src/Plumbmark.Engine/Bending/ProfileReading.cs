using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Bending;

/// <summary>How far one place along a part lies from a straightedge or a table.</summary>
/// <param name="StationMetres">Place along the part, m.</param>
/// <param name="HeightMetres">Distance towards the crown side of the bend, m; a constant and a tilt in it do not matter.</param>
/// <param name="StandardUncertaintyMetres">Standard uncertainty of the distance, m; positive.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct ProfileReading(double StationMetres, double HeightMetres, double StandardUncertaintyMetres);
