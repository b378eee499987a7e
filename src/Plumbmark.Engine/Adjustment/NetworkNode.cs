using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Adjustment;

/// <summary>One point's place in plan, or its height: the parts in which points can float.</summary>
/// <param name="Point">Index of the point.</param>
/// <param name="IsHeight">True for the height, false for the plan.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct NetworkNode(int Point, bool IsHeight)
{
    /// <summary>All nodes of a network that a reading touches.</summary>
    public static IEnumerable<NetworkNode> AllOf(CompiledNetwork network) =>
        from i in Enumerable.Range(0, network.Points.Length)
        from isHeight in (bool[])[false, true]
        where isHeight ? network.Points[i].IsTouched[2] : network.Points[i].IsTouched[0] || network.Points[i].IsTouched[1]
        select new NetworkNode(i, isHeight);

    /// <summary>The axes of the node.</summary>
    public IEnumerable<int> Axes => IsHeight ? [2] : [0, 1];
}
