namespace Plumbmark.Engine.Adjustment;

/// <summary>How high the floor stands above the reference level at a place in plan, metres.</summary>
/// <remarks>
/// The map corrects a height; it never tells where in plan a point is. Its value is therefore taken at the point's place and iterated,
/// and its slope is left out of the derivatives: on a floor that falls 1 in 60, a millimetre in plan is 0.02 mm of height.
/// </remarks>
/// <param name="xMetres">Forward.</param>
/// <param name="yMetres">Left.</param>
public delegate double FloorMap(double xMetres, double yMetres);
