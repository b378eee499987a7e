using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Bench;

/// <summary>A gap under a straightedge. What goes and what stops bracket it; they may be the same reading of a caliper.</summary>
/// <param name="At">Where along the straightedge.</param>
/// <param name="Goes">The thickest feeler, or pile of paper, that goes in; zero when none does.</param>
/// <param name="Stops">The thinnest that does not; null when the gap itself was measured.</param>
/// <param name="Sheets">How many sheets of paper went in where paper was used; null otherwise.</param>
public sealed record Gap(Length At, Length Goes, Length? Stops = null, int? Sheets = null)
{
    /// <summary>Usual thickness of one sheet of 80 g/m² office paper: 0.10 mm, varying by about 5 % between papers (common practice).</summary>
    public const decimal PaperMillimetres = 0.1m;

    /// <summary>A gap that takes so many sheets of office paper and not one more.</summary>
    public static Gap OfPaper(Length at, int sheets) =>
        new(at, Length.FromMillimetres(sheets * PaperMillimetres), Length.FromMillimetres((sheets + 1) * PaperMillimetres), sheets);
}
