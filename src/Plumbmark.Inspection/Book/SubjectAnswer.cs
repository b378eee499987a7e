namespace Plumbmark.Inspection.Book;

/// <summary>What the book says of one thing for this car.</summary>
/// <param name="Subject">The thing.</param>
/// <param name="Choice">The figure that applies, or why there is none.</param>
/// <param name="ForOthers">Figures that cannot apply, because they are for other cars.</param>
public sealed record SubjectAnswer(BookSubject Subject, FigureChoice Choice, IReadOnlyList<FigureOnPage> ForOthers);
