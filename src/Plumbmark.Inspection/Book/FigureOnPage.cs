namespace Plumbmark.Inspection.Book;

/// <summary>A figure together with its page, seen for one car.</summary>
/// <param name="Page">The page.</param>
/// <param name="Dimension">The figure.</param>
/// <param name="Fit">Whether both are meant for the car.</param>
public sealed record FigureOnPage(BookPage Page, BookDimension Dimension, SerialFit Fit)
{
    /// <summary>Where it is printed.</summary>
    public BookSource Source => Page.SourceOf(Dimension);
}
