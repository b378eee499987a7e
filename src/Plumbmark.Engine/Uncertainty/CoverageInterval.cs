using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Uncertainty;

/// <summary>Two ends between which the value lies with a stated probability. Not a pair of limits: those are somebody's demand.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct CoverageInterval(double Low, double High)
{
    /// <summary>How far apart the ends are.</summary>
    public double Width => High - Low;
}
