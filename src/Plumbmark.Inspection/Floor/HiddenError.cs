namespace Plumbmark.Inspection.Floor;

/// <summary>External reliability: an error of a reading that is just not noticed (alpha 0.001, beta 0.20), and what it does.</summary>
/// <remarks>W. Baarda, A testing procedure for use in geodetic networks, Netherlands Geodetic Commission, 1968.</remarks>
/// <param name="Reading">The reading in which it would sit.</param>
/// <param name="ChangeMetres">By how much it would change the value, metres, either way.</param>
public sealed record HiddenError(string Reading, double ChangeMetres);
