namespace Plumbmark.Inspection.Floor;

/// <summary>How many minutes one reading of each kind takes in this garage: the price that the next best reading is weighed against.</summary>
/// <remarks>The defaults are common practice for one person with a tape, no source; everybody's differ, so each may be changed.</remarks>
/// <param name="Plan">A tape length between two marks on the floor.</param>
/// <param name="Direct">A length from point to point with a trammel.</param>
/// <param name="Height">A height above the level line.</param>
/// <param name="Drop">One more plumb drop, the line lifted off and hung again.</param>
/// <param name="FirstDrop">The first drop of a point, with its paper on the floor.</param>
public sealed record ReadingMinutes(double Plan = 1.5, double Direct = 3, double Height = 1.5, double Drop = 1.5, double FirstDrop = 2.5);
