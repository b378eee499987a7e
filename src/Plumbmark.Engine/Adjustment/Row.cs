using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Adjustment;

/// <summary>One equation of a compiled network: model(x) − value, weighted by 1 / sigma.</summary>
/// <param name="Kind">Which equation.</param>
/// <param name="A">First point, or the point or tool a prior belongs to.</param>
/// <param name="B">Second point, or −1.</param>
/// <param name="C">Third point, or −1.</param>
/// <param name="Tool">Tool whose zero and scale apply, or −1.</param>
/// <param name="Value">What was read, metres, in local coordinates where the kind has an origin.</param>
/// <param name="Constant">A known length that belongs to the model: a step, a stand-off; else zero.</param>
/// <param name="Sigma">Standard uncertainty.</param>
/// <param name="Observation">Index of the reading in the network, or −1 for a prior that is no reading.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Row(
    RowKind Kind,
    int A,
    int B,
    int C,
    int Tool,
    double Value,
    double Constant,
    double Sigma,
    int Observation
);
