using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Bench;

/// <summary>Something measured on a part, as the person took it. Never changed: a correction is a new one. One measure may give several dimensions.</summary>
/// <remarks>Closed: a new kind is added here, in <c>MeasureJson</c> and in <see cref="Reduction"/>.</remarks>
public abstract record Measure
{
    private Measure(string id) => Id = id;

    /// <summary>Its own name, so that it may be sent twice and is kept once.</summary>
    public string Id { get; init; }

    /// <summary>The name of the tool; null when not told.</summary>
    public string? Tool { get; init; }

    /// <summary>Standard uncertainty of one reading, when its owner states it; null otherwise.</summary>
    public Length? Sigma { get; init; }

    /// <summary>Anything the person noted; null when nothing.</summary>
    public string? Note { get; init; }

    /// <summary>Why it was taken back; null while it stands.</summary>
    public string? Withdrawn { get; init; }

    /// <summary>One dimension with a caliper, a rule or a height gauge, once or several times.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Dimension">Which dimension.</param>
    /// <param name="Values">Each repeat.</param>
    public sealed record Plain(string Id, string Dimension, IReadOnlyList<Length> Values) : Measure(Id);

    /// <summary>One angle, with a protractor or a digital level, once or several times.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Dimension">Which dimension.</param>
    /// <param name="Degrees">Each repeat.</param>
    public sealed record Angle(string Id, string Dimension, IReadOnlyList<Amount.OfAngle> Degrees) : Measure(Id);

    /// <summary>A bore's diameters in two directions square to each other, near its mouth and deep inside.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Name">The bore.</param>
    /// <param name="Mouth">The two diameters near the mouth.</param>
    /// <param name="Deep">The two diameters deep inside; empty when not taken.</param>
    /// <param name="Mate">Diameter of the pin that runs in it or the bush that is pressed into it; null when not told.</param>
    /// <param name="MateIs">Which of the two.</param>
    public sealed record Bore(
        string Id,
        string Name,
        IReadOnlyList<Length> Mouth,
        IReadOnlyList<Length> Deep,
        Length? Mate = null,
        BoreMate MateIs = BoreMate.Pin
    ) : Measure(Id);

    /// <summary>The distance of two bores, measured between their near edges, over their far edges, or from centre to centre.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="From">One bore.</param>
    /// <param name="To">The other bore.</param>
    /// <param name="Values">Each repeat.</param>
    /// <param name="Over">Between what it was measured.</param>
    public sealed record Centres(string Id, string From, string To, IReadOnlyList<Length> Values, CentresOver Over) : Measure(Id);

    /// <summary>Heights above the flat surface that the part is clamped to, on the clamped face and on the places that matter.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Face">Heights on the face, at least three not on one line: they say how the part stands, so the face need not be perfect.</param>
    /// <param name="Places">The places that matter.</param>
    public sealed record Heights(string Id, IReadOnlyList<FaceHeight> Face, IReadOnlyList<PlaceHeight> Places) : Measure(Id);

    /// <summary>Gaps under a straightedge laid along an edge.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Dimension">The edge.</param>
    /// <param name="Gaps">Each gap with where it is; at least three.</param>
    public sealed record Straightedge(string Id, string Dimension, IReadOnlyList<Gap> Gaps) : Measure(Id);

    /// <summary>Rods through two eyes: their distance on one side and on the other, and the height of each rod's ends.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="From">One eye.</param>
    /// <param name="To">The other eye.</param>
    /// <param name="Span">How far apart the two places are, along the rods, where they were measured.</param>
    /// <param name="Near">Distance of the rods at the first place; null when not taken.</param>
    /// <param name="Far">Distance of the rods at the second place; null when not taken.</param>
    /// <param name="FromHeights">Heights of the first rod at the first and second place; null when not taken.</param>
    /// <param name="ToHeights">Heights of the second rod at the first and second place; null when not taken.</param>
    public sealed record Rods(
        string Id,
        string From,
        string To,
        Length Span,
        Length? Near,
        Length? Far,
        (Length First, Length Second)? FromHeights,
        (Length First, Length Second)? ToHeights
    ) : Measure(Id);

    /// <summary>Laid back to back on the part of the other side, on a common rod: how much larger each dimension is here than there.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Differences">Dimension by dimension, positive where this part is the larger.</param>
    public sealed record BackToBack(string Id, IReadOnlyList<SideDifference> Differences) : Measure(Id);

    /// <summary>A spring's length under known loads.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Loads">At least two different loads; a load of nothing gives the free length.</param>
    public sealed record SpringLoads(string Id, IReadOnlyList<LoadedLength> Loads) : Measure(Id);

    /// <summary>A dial held against a turning part: every reading of one turn.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Dimension">Which run-out.</param>
    /// <param name="Readings">The dial's readings, at least two.</param>
    public sealed record RunOut(string Id, string Dimension, IReadOnlyList<Length> Readings) : Measure(Id);
}
