using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Press;

/// <summary>One bite as it was read. It is never changed: a wrong one is taken back with a reason and entered anew.</summary>
/// <param name="Id">Its own name.</param>
/// <param name="Travel">Travel of the ram from touching the part as it stood.</param>
public sealed record BiteRecord(string Id, Length Travel)
{
    /// <summary>How far the part was still out after release; null when the set was measured instead.</summary>
    public Length? Left { get; init; }

    /// <summary>How far it went and stayed; null when what is left was measured instead.</summary>
    public Length? Set { get; init; }

    /// <summary>How far it was out when looked at again after some minutes; null when not done.</summary>
    public Length? LeftLater { get; init; }

    /// <summary>Largest reading of the gauge, in the gauge's own unit; null without a gauge.</summary>
    public double? Load { get; init; }

    /// <summary>How long the load was held, s; null when not noted.</summary>
    public double? DwellSeconds { get; init; }

    /// <summary>What was seen or heard.</summary>
    public IReadOnlyList<BiteSign> Signs { get; init; } = [];

    /// <summary>Anything else; null when nothing.</summary>
    public string? Note { get; init; }

    /// <summary>Why it was taken back; null while it stands.</summary>
    public string? Withdrawn { get; init; }
}
