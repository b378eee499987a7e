namespace Plumbmark.Inspection.Road;

/// <summary>How one front wheel's steering axis meets the road. Metres.</summary>
/// <param name="Side">The side.</param>
/// <param name="ScrubRadiusDrawn">Scrub radius as drawn: positive when the axis meets the road inboard of the tyre's middle.</param>
/// <param name="ScrubRadius">As found.</param>
/// <param name="TrailDrawn">Trail as drawn: positive when the axis meets the road ahead of the tyre's middle.</param>
/// <param name="Trail">As found.</param>
/// <param name="RollCentreDrawn">Height of the roll centre above the road as drawn.</param>
/// <param name="RollCentre">As found, as if the other side were the same.</param>
public sealed record GroundAnswer(
    Side Side,
    double ScrubRadiusDrawn,
    double ScrubRadius,
    double TrailDrawn,
    double Trail,
    double RollCentreDrawn,
    double RollCentre
);
