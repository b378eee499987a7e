namespace Plumbmark.Inspection.Floor;

/// <summary>The same length measured on the left and on the right: the first useful answer, after five readings. The tape's scale cancels in it.</summary>
/// <param name="LeftFrom">One end on the left side (or the left end of the first diagonal).</param>
/// <param name="LeftTo">The other end.</param>
/// <param name="RightFrom">The mirrored end.</param>
/// <param name="RightTo">The other mirrored end.</param>
/// <param name="DifferenceMetres">Left length minus right length.</param>
/// <param name="UMetres">Standard uncertainty of the difference.</param>
/// <param name="Sentence">The comparison in words, with how sure it is.</param>
public sealed record SideComparison(
    string LeftFrom,
    string LeftTo,
    string RightFrom,
    string RightTo,
    double DifferenceMetres,
    double UMetres,
    string Sentence
);
