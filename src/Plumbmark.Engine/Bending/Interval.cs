using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Bending;

/// <summary>A middle value with the ends of its 95 % interval, all in the unit of what it describes.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="Middle">Median.</param>
/// <param name="High">Upper end.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Interval(double Low, double Middle, double High);
