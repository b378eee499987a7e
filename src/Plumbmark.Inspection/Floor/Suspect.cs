namespace Plumbmark.Inspection.Floor;

/// <summary>A reading or a point that the fit does not believe. It is doubted, never corrected: the person measures again.</summary>
/// <param name="Reading">The doubted reading; null when a point is doubted.</param>
/// <param name="Point">The doubted point; null when a reading is doubted.</param>
/// <param name="Kind">What kind of slip explains it, such as <c>inch</c> or <c>digits-swapped</c>; see the blunder kinds of the network engine.</param>
/// <param name="SizeMetres">Observed minus believed; null when the kind has no single size.</param>
/// <param name="Odds">How many times likelier than the next best explanation.</param>
/// <param name="Sentence">What is doubted, why, and the one measurement that decides.</param>
public sealed record Suspect(string? Reading, string? Point, string Kind, double? SizeMetres, double Odds, string Sentence)
{
    /// <summary>Whether it has been measured again and the repeat agrees with the rest: nothing is left to do.</summary>
    public bool IsSettled { get; init; }
}
