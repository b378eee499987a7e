namespace Plumbmark.Engine.Adjustment;

/// <summary>Where one point stands in a compiled network: its unknowns, or the values it is fixed at.</summary>
/// <remarks>
/// The base of a point is its mark when only lengths between marks touch it (the drop error is then added to the covariance afterwards),
/// otherwise the point itself, with the drop error as two unknowns of their own when marks and points mix.
/// </remarks>
internal sealed class PointSlot
{
    public required string Id { get; init; }

    /// <summary>Index of the unknown for each axis, −1 where the coordinate is fixed or untouched.</summary>
    public int[] Unknown { get; } = [-1, -1, -1];

    /// <summary>Whether a reading touches the axis.</summary>
    public bool[] IsTouched { get; } = [false, false, false];

    /// <summary>Local value, metres, of a fixed coordinate.</summary>
    public double[] Fixed { get; } = [0, 0, 0];

    /// <summary>Index of the first of two unknown drop errors, or −1.</summary>
    public int DropError { get; set; } = -1;

    /// <summary>The base is the mark, and the drop error is not among the unknowns.</summary>
    public bool IsMarkOnly { get; set; }

    public DropRecord Drop { get; set; }

    public double Base(int axis, ReadOnlySpan<double> x) => Unknown[axis] >= 0 ? x[Unknown[axis]] : Fixed[axis];

    public double Mark(int axis, ReadOnlySpan<double> x) => Base(axis, x) + (DropError >= 0 ? x[DropError + axis] : 0);
}
