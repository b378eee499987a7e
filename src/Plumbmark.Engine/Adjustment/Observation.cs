using System.Diagnostics;

namespace Plumbmark.Engine.Adjustment;

/// <summary>
/// One reading as the fit sees it: what was read, between which points, and how sure the reading itself is. The kinds are those of docs/method.md, 1.
/// </summary>
/// <remarks>
/// A mark is where the plumb bob met the floor; a point is the hole or bolt above it. Each kind says which of the two it lives on.
/// All values are metres; every sigma is a standard uncertainty, greater than zero, and belongs to this reading alone.
/// </remarks>
public abstract record Observation
{
    private Observation(string id, double valueMetres, double sigmaMetres, string? tool) =>
        (Id, ValueMetres, SigmaMetres, Tool) = (id, valueMetres, sigmaMetres, tool);

    /// <summary>The reading's name, unique in its network.</summary>
    public string Id { get; init; }

    /// <summary>What was read, metres. For an indirect drop: zero, the misclosure between the point and its marks.</summary>
    public double ValueMetres { get; init; }

    /// <summary>Standard uncertainty of this reading alone, metres.</summary>
    public double SigmaMetres { get; init; }

    /// <summary>The <see cref="NetworkTool"/> whose zero and scale the reading shares, if any.</summary>
    public string? Tool { get; init; }

    /// <summary>Tape between two floor marks, or a trammel set to plan length: √(dx² + dy²) of the marks.</summary>
    public sealed record PlanDistance(string Id, string From, string To, double ValueMetres, double SigmaMetres, string? Tool = null)
        : Observation(Id, ValueMetres, SigmaMetres, Tool);

    /// <summary>Point to point in space: √(dx² + dy² + dz²) of the points.</summary>
    public sealed record DirectDistance(string Id, string From, string To, double ValueMetres, double SigmaMetres, string? Tool = null)
        : Observation(Id, ValueMetres, SigmaMetres, Tool);

    /// <summary>Height of a point above the reference level; with a <see cref="FloorMap"/>, above the floor: z − z_floor(x, y).</summary>
    public sealed record Height(
        string Id,
        string Point,
        double ValueMetres,
        double SigmaMetres,
        string? Tool = null,
        FloorMap? Floor = null
    ) : Observation(Id, ValueMetres, SigmaMetres, Tool);

    /// <summary>Height difference of two points, positive when <paramref name="To"/> is the higher: z_to − z_from.</summary>
    public sealed record Rise(string Id, string From, string To, double ValueMetres, double SigmaMetres, string? Tool = null)
        : Observation(Id, ValueMetres, SigmaMetres, Tool);

    /// <summary>Distance in plan of a mark from the string through two other marks, positive to the left of from → to.</summary>
    public sealed record Offset(
        string Id,
        string Point,
        string From,
        string To,
        double ValueMetres,
        double SigmaMetres,
        string? Tool = null
    ) : Observation(Id, ValueMetres, SigmaMetres, Tool);

    /// <summary>One coordinate of a point, known beforehand with an uncertainty.</summary>
    public sealed record CoordinatePrior(string Id, string Point, Axis Axis, double ValueMetres, double SigmaMetres)
        : Observation(Id, ValueMetres, SigmaMetres, null);

    /// <summary>
    /// One more plumb drop of a point: the new mark minus the first mark, forward and left. The lengths were taken to the first mark.
    /// </summary>
    /// <remarks>The gap is read with a rule on paper; what that adds is small beside the drop and is left out.</remarks>
    public sealed record DropShift(string Id, string Point, double DxMetres, double DyMetres)
        : Observation(Id, double.Hypot(DxMetres, DyMetres), 0, null);

    /// <summary>One more plumb drop of which only the distance of the new mark from the first was kept.</summary>
    public sealed record DropDistance(string Id, string Point, double ValueMetres) : Observation(Id, ValueMetres, 0, null);

    /// <summary>A point dropped as the midpoint of two marks; <paramref name="SigmaMetres"/> per axis holds the drops' error.</summary>
    public sealed record MidpointDrop(string Id, string Point, string MarkA, string MarkB, double SigmaMetres)
        : Observation(Id, 0, SigmaMetres, null);

    /// <summary>A point that lies a known step from its mark (a bar clamped beside an obstructed hole): point = mark + (dx, dy).</summary>
    public sealed record OffsetDrop(string Id, string Point, string Mark, double DxMetres, double DyMetres, double SigmaMetres)
        : Observation(Id, 0, SigmaMetres, null);

    /// <summary>
    /// A drop from the edge of a hole of known diameter. The edge lies from the centre in the direction given, counted from x (forward)
    /// toward y (left): point = mark − diameter / 2 · (cos, sin).
    /// </summary>
    public sealed record HoleEdgeDrop(
        string Id,
        string Point,
        string Mark,
        double DiameterMetres,
        double DirectionRadians,
        double SigmaMetres
    ) : Observation(Id, 0, SigmaMetres, null);

    /// <summary>
    /// A straight bar through both holes, dropped from its ends: the point lies the stand-off inward from its near end toward the far end.
    /// </summary>
    public sealed record BarDrop(string Id, string Point, string NearEnd, string FarEnd, double StandOffMetres, double SigmaMetres)
        : Observation(Id, 0, SigmaMetres, null);

    /// <summary>Takes the one road that applies.</summary>
    public T Match<T>(
        Func<PlanDistance, T> plan,
        Func<DirectDistance, T> direct,
        Func<Height, T> height,
        Func<Rise, T> rise,
        Func<Offset, T> offset,
        Func<CoordinatePrior, T> prior,
        Func<DropShift, T> dropShift,
        Func<DropDistance, T> dropDistance,
        Func<MidpointDrop, T> midpoint,
        Func<OffsetDrop, T> offsetDrop,
        Func<HoleEdgeDrop, T> holeEdge,
        Func<BarDrop, T> bar
    ) =>
        this switch
        {
            PlanDistance o => plan(o),
            DirectDistance o => direct(o),
            Height o => height(o),
            Rise o => rise(o),
            Offset o => offset(o),
            CoordinatePrior o => prior(o),
            DropShift o => dropShift(o),
            DropDistance o => dropDistance(o),
            MidpointDrop o => midpoint(o),
            OffsetDrop o => offsetDrop(o),
            HoleEdgeDrop o => holeEdge(o),
            BarDrop o => bar(o),
            _ => throw new UnreachableException(),
        };
}
