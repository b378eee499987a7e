using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Car;

/// <summary>One measurement as a person took it and wrote it. It is never changed: a correction is a new reading with a reason.</summary>
/// <remarks>Not an estimate: what the program computes from readings has types of its own.</remarks>
/// <param name="Id">Its own name, so that it may be sent twice and is kept once.</param>
public abstract record Reading(string Id)
{
    /// <summary>The name of the tool; null when not told.</summary>
    public string? Tool { get; init; }

    /// <summary>Standard uncertainty of this reading, when its owner states it: then it is used as it is. Null otherwise.</summary>
    public Length? Sigma { get; init; }

    /// <summary>The graduation where the tape was started, to be subtracted; null when it was started at its zero.</summary>
    public Length? StartAt { get; init; }

    /// <summary>Anything the person noted; null when nothing.</summary>
    public string? Note { get; init; }

    /// <summary>Why the person took the reading back; null while it stands. A reading taken back stays in the file.</summary>
    public string? Withdrawn { get; init; }

    /// <summary>The points it touches, in order.</summary>
    public abstract IEnumerable<string> Points { get; }

    /// <summary>The one length that was read, before any start graduation is taken off; null of a drop and of an indirect way, which are none.</summary>
    public virtual Length? Shown => null;

    /// <summary>Tape between two floor marks, or a trammel set to plan length.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="From">The point where the tape starts.</param>
    /// <param name="To">The point where it is read.</param>
    /// <param name="Value">What the tape shows at <paramref name="To"/>.</param>
    public sealed record Plan(string Id, string From, string To, Length Value) : Reading(Id)
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Points => [From, To];

        /// <inheritdoc/>
        public override Length? Shown => Value;
    }

    /// <summary>Point to point in space.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="From">The point where the tape starts.</param>
    /// <param name="To">The point where it is read.</param>
    /// <param name="Value">What the tape shows at <paramref name="To"/>.</param>
    public sealed record Direct(string Id, string From, string To, Length Value) : Reading(Id)
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Points => [From, To];

        /// <inheritdoc/>
        public override Length? Shown => Value;
    }

    /// <summary>A point's height above the reference (water level, laser, table).</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Point">The point.</param>
    /// <param name="Value">Up is positive.</param>
    public sealed record Height(string Id, string Point, Length Value) : Reading(Id)
    {
        /// <summary>Whether it was counted from the floor under the point and not from a level line.</summary>
        public bool IsAboveFloor { get; init; }

        /// <inheritdoc/>
        public override IEnumerable<string> Points => [Point];

        /// <inheritdoc/>
        public override Length? Shown => Value;
    }

    /// <summary>How much higher one point is than another.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="From">The point it is counted from.</param>
    /// <param name="To">The point it is counted to.</param>
    /// <param name="Value">Positive when <paramref name="To"/> is higher.</param>
    public sealed record Rise(string Id, string From, string To, Length Value) : Reading(Id)
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Points => [From, To];

        /// <inheritdoc/>
        public override Length? Shown => Value;
    }

    /// <summary>How far a mark lies from the string through two others.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Point">The point beside the string.</param>
    /// <param name="From">Where the string starts.</param>
    /// <param name="To">Where the string ends.</param>
    /// <param name="Value">Positive to the left of the way from <paramref name="From"/> to <paramref name="To"/>.</param>
    public sealed record Offset(string Id, string Point, string From, string To, Length Value) : Reading(Id)
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Points => [Point, From, To];

        /// <inheritdoc/>
        public override Length? Shown => Value;
    }

    /// <summary>One more plumb drop of a point: where the new mark fell from the first.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Point">The point dropped again.</param>
    /// <param name="Distance">Distance between the marks, when only that was measured; null when <paramref name="Dx"/> and <paramref name="Dy"/> are given.</param>
    /// <param name="Dx">Forward part of the step; null when not measured.</param>
    /// <param name="Dy">Leftward part of the step; null when not measured.</param>
    public sealed record Drop(string Id, string Point, Length? Distance, Length? Dx, Length? Dy) : Reading(Id)
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Points => [Point];
    }

    /// <summary>A point that the plumb line does not reach, brought to the floor by marks near it.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Point">The point.</param>
    /// <param name="Way">How.</param>
    public sealed record Indirect(string Id, string Point, IndirectWay Way) : Reading(Id)
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Points => [Point, .. Way.Marks];
    }
}
