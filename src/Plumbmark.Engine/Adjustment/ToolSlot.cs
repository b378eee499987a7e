namespace Plumbmark.Engine.Adjustment;

/// <summary>Where one tool stands in a compiled network: its unknowns, or the zero and scale it is taken to have.</summary>
internal sealed class ToolSlot(NetworkTool tool)
{
    public NetworkTool Source { get; } = tool;

    public int Zero { get; set; } = -1;

    public int Scale { get; set; } = -1;

    public double ZeroAt(ReadOnlySpan<double> x) => Zero >= 0 ? x[Zero] : Source.ZeroMetres;

    public double ScaleAt(ReadOnlySpan<double> x) => Scale >= 0 ? x[Scale] : Source.Scale;
}
