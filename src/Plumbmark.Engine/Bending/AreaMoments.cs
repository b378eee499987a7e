using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Bending;

/// <summary>The area of a part of a section with its first and second moment about a horizontal line.</summary>
/// <param name="Area">Area, m².</param>
/// <param name="First">∫ y dA about the line, m³, positive upwards.</param>
/// <param name="Second">∫ y² dA about the line, m⁴.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct AreaMoments(double Area, double First, double Second)
{
    /// <summary>Both parts together, about the same line.</summary>
    public static AreaMoments operator +(AreaMoments left, AreaMoments right) =>
        new(left.Area + right.Area, left.First + right.First, left.Second + right.Second);

    /// <summary>The first part without the second, about the same line.</summary>
    public static AreaMoments operator -(AreaMoments left, AreaMoments right) =>
        new(left.Area - right.Area, left.First - right.First, left.Second - right.Second);

    /// <summary>The same part about a line <paramref name="metres"/> higher.</summary>
    /// <remarks>y′ = y − d: S₁′ = S₁ − d·A, S₂′ = S₂ − 2d·S₁ + d²·A (Steiner).</remarks>
    public AreaMoments AboutLineHigherBy(double metres) =>
        new(Area, First - (metres * Area), Second - (2 * metres * First) + (metres * metres * Area));
}
