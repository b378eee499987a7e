using System.Runtime.InteropServices;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>One coordinate with its factor: a sum of these is a quantity whose uncertainty follows from the full covariance.</summary>
/// <param name="Coordinate">Its place in <see cref="MeasuredFrame.Values"/>.</param>
/// <param name="Factor">What it is multiplied with.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Term(int Coordinate, double Factor);
