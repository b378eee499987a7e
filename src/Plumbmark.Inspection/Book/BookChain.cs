namespace Plumbmark.Inspection.Book;

/// <summary>Figures that the drawing sets end to end under a total.</summary>
/// <param name="Total">The name of the total's figure.</param>
/// <param name="Parts">The names of the parts' figures; two at least.</param>
public sealed record BookChain(string Total, IReadOnlyList<string> Parts);
