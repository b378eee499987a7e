using Plumbmark.Inspection.Book.Checks;

namespace Plumbmark.Inspection.Book;

/// <summary>A page with what it says against itself.</summary>
/// <param name="Page">The page.</param>
/// <param name="Findings">The findings, contradictions first.</param>
public sealed record PageReport(BookPage Page, IReadOnlyList<BookFinding> Findings);
