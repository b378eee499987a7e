namespace Plumbmark.Engine.Bending;

/// <summary>How the edges of a <see cref="PlateElement"/> are held, and how the squeeze runs across it.</summary>
public enum PlateSupport
{
    /// <summary>Both edges held, squeezed evenly: the ram-side face of a box.</summary>
    HeldBothEdges,

    /// <summary>One edge free, squeezed evenly: the flange of a channel or of an I.</summary>
    OneEdgeFree,

    /// <summary>One edge free and squeezed most there, the held edge near the neutral axis: the legs of a channel that point at the ram.</summary>
    FreeEdgeSqueezedMost,

    /// <summary>Both edges held, squeezed at one and stretched at the other: a web.</summary>
    Web,

    /// <summary>The wall of a round tube.</summary>
    TubeWall,
}
