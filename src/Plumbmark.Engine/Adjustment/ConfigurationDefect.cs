namespace Plumbmark.Engine.Adjustment;

/// <summary>Which points the readings do not tie to the rest, and what would.</summary>
/// <param name="MissingReadings">How many more independent readings are needed at least.</param>
/// <param name="Floating">The points that are not tied, in network order.</param>
/// <param name="Groups">The floating points in groups that hold together among themselves.</param>
/// <param name="Ties">
/// Readings that would each remove one of the missing ones, taken together all of them; a choice among many, by the best geometry.
/// </param>
public sealed record ConfigurationDefect(
    int MissingReadings,
    IReadOnlyList<FloatingPoint> Floating,
    IReadOnlyList<IReadOnlyList<string>> Groups,
    IReadOnlyList<Tie> Ties
);
