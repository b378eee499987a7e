using System.Diagnostics;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Why a network cannot be fitted as it stands: a fact about what was handed over, not about the readings' quality.</summary>
public abstract record NetworkFault
{
    private NetworkFault() { }

    /// <summary>There is no reading that touches a coordinate.</summary>
    public sealed record NothingToFit : NetworkFault;

    /// <summary>Two points, readings or tools share a name.</summary>
    public sealed record DuplicateName(string Name) : NetworkFault;

    /// <summary>A reading names a point that is not in the network.</summary>
    public sealed record UnknownPoint(string ReadingId, string Point) : NetworkFault;

    /// <summary>A reading names a tool that is not in the network.</summary>
    public sealed record UnknownTool(string ReadingId, string Tool) : NetworkFault;

    /// <summary>A reading goes from a point to itself.</summary>
    public sealed record SamePointTwice(string ReadingId, string Point) : NetworkFault;

    /// <summary>A reading's value is not a finite number, or a length is negative.</summary>
    public sealed record ValueNotAllowed(string ReadingId, double ValueMetres) : NetworkFault;

    /// <summary>A standard uncertainty is not a finite number greater than zero (for drops and tools: not negative).</summary>
    /// <param name="Name">The reading, point or tool.</param>
    /// <param name="Sigma">What was found, metres; for a tool's scale, metres per metre.</param>
    public sealed record SigmaNotAllowed(string Name, double Sigma) : NetworkFault;

    /// <summary>A fixed or sketched coordinate, or a tool's zero or scale, is not a finite number.</summary>
    public sealed record NotFinite(string Name) : NetworkFault;

    /// <summary>Takes the one road that applies.</summary>
    public T Match<T>(
        Func<NothingToFit, T> nothingToFit,
        Func<DuplicateName, T> duplicateName,
        Func<UnknownPoint, T> unknownPoint,
        Func<UnknownTool, T> unknownTool,
        Func<SamePointTwice, T> samePointTwice,
        Func<ValueNotAllowed, T> valueNotAllowed,
        Func<SigmaNotAllowed, T> sigmaNotAllowed,
        Func<NotFinite, T> notFinite
    ) =>
        this switch
        {
            NothingToFit f => nothingToFit(f),
            DuplicateName f => duplicateName(f),
            UnknownPoint f => unknownPoint(f),
            UnknownTool f => unknownTool(f),
            SamePointTwice f => samePointTwice(f),
            ValueNotAllowed f => valueNotAllowed(f),
            SigmaNotAllowed f => sigmaNotAllowed(f),
            NotFinite f => notFinite(f),
            _ => throw new UnreachableException(),
        };
}
