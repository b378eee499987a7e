using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Car;

/// <summary>A named place on the frame that readings refer to. Left and right are the car's own, seen from the driver's seat.</summary>
/// <remarks>Axes after ISO 8855: x forward, y left, z up.</remarks>
/// <param name="Id">Its name, such as <c>A.L</c>.</param>
/// <param name="Mirror">The name of its partner on the other side; null for a point with none.</param>
/// <param name="Role">What it carries.</param>
/// <param name="Sketch">Roughly where it is (start values and the drawing only, never evidence); null when not told.</param>
/// <param name="Nominal">Where the book says it is; any of the three may be missing.</param>
/// <param name="DropSigma">Standard uncertainty of one plumb drop of this point; null for the default; zero when the mark is the point.</param>
/// <param name="IsFixed">Whether its sketch is taken as its exact place, as in a surveyor's network.</param>
/// <param name="Label">What the owner calls it, when the name is not enough; null otherwise.</param>
/// <param name="Asymmetry">
/// Designed to stand this much away from the mirror image of its partner: ahead, to the left, above. A part that is null is built differently by an
/// unknown amount and is not compared. Null as a whole: the pair is built alike.
/// </param>
/// <param name="NominalSource">Book, edition, page and figures that the nominal is from; null when nobody said, which is shown as no source.</param>
/// <param name="CannotDrop">Whether something is in the way of the plumb line, so that it must be brought down indirectly.</param>
/// <param name="NominalDoubt">Why the book's figure is not believed; it is then kept and left out. Null while it is believed.</param>
public sealed record FramePoint(
    string Id,
    string? Mirror = null,
    PointRole Role = PointRole.Other,
    Place? Sketch = null,
    Place? Nominal = null,
    Length? DropSigma = null,
    bool IsFixed = false,
    string? Label = null,
    Place? Asymmetry = null,
    string? NominalDoubt = null,
    string? NominalSource = null,
    bool CannotDrop = false
)
{
    /// <summary>Diameter of the hole the point is the centre of; null when it is none or nobody measured it. A length taken to its edge is off by half of it.</summary>
    public Length? Hole { get; init; }

    /// <summary>Standard uncertainty of a fixed place, each coordinate alike; null when it is exact. Only with <see cref="IsFixed"/>.</summary>
    public Length? FixedSigma { get; init; }
}
