namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>A left and a right point that mirror each other, by their places in the list of the frame's points.</summary>
/// <param name="Name">The station's name: what both names have in common, such as <c>A</c> of A.L and A.R.</param>
/// <param name="Left">The point on the car's own left.</param>
/// <param name="Right">Its partner.</param>
internal sealed record FramePair(string Name, int Left, int Right);
