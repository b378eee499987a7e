using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Bending;

/// <summary>The heights of both edges of a part above a table at one station.</summary>
/// <param name="StationMetres">Place along the part, m.</param>
/// <param name="LeftMetres">Height of the left edge, looking along growing stations, m.</param>
/// <param name="RightMetres">Height of the right edge, m.</param>
/// <param name="WidthMetres">Distance between the two edges, m; positive.</param>
/// <param name="StandardUncertaintyMetres">Standard uncertainty of each height, m; positive.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct TwistReading(
    double StationMetres,
    double LeftMetres,
    double RightMetres,
    double WidthMetres,
    double StandardUncertaintyMetres
);
