using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Car;

/// <summary>How a point that the plumb line does not reach was brought to the floor. Marks are points of the frame that stand for a mark only.</summary>
public abstract record IndirectWay
{
    private IndirectWay() { }

    /// <summary>The marks it uses, in order.</summary>
    public abstract IEnumerable<string> Marks { get; }

    /// <summary>Two drops equally far to either side: the point is half way between the marks.</summary>
    /// <param name="From">One mark.</param>
    /// <param name="To">The other.</param>
    public sealed record Midpoint(string From, string To) : IndirectWay
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Marks => [From, To];
    }

    /// <summary>A bar clamped at the point and dropped from: the point lies a measured step from the mark.</summary>
    /// <param name="Mark">The mark.</param>
    /// <param name="Dx">From the mark forward to the point.</param>
    /// <param name="Dy">From the mark leftward to the point.</param>
    public sealed record Offset(string Mark, Length Dx, Length Dy) : IndirectWay
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Marks => [Mark];
    }

    /// <summary>A drop from the edge of a hole of known diameter.</summary>
    /// <param name="Mark">The mark.</param>
    /// <param name="Diameter">The hole's diameter.</param>
    /// <param name="Edge">Which edge the line hung from.</param>
    public sealed record HoleEdge(string Mark, Length Diameter, EdgeSide Edge) : IndirectWay
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Marks => [Mark];
    }

    /// <summary>A straight bar through the holes of both sides, dropped from its ends.</summary>
    /// <param name="NearEnd">The mark under the end on the point's side.</param>
    /// <param name="FarEnd">The mark under the other end.</param>
    /// <param name="StandOff">How far the bar's near end stands out from the point.</param>
    public sealed record Bar(string NearEnd, string FarEnd, Length StandOff) : IndirectWay
    {
        /// <inheritdoc/>
        public override IEnumerable<string> Marks => [NearEnd, FarEnd];
    }
}
