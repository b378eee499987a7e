using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>Where a figure is printed. Every part may be unknown; a figure without any of them is always shown as having no source.</summary>
/// <param name="Title">The book.</param>
/// <param name="Edition">Its edition, print or date.</param>
/// <param name="Page">The page or section.</param>
/// <param name="Figure">The figure or the letter in it.</param>
public sealed record BookSource(string? Title = null, string? Edition = null, string? Page = null, string? Figure = null)
{
    /// <summary>What is shown where no source is known.</summary>
    public static string NoSource => Texts.Say("book.source.no-source");

    /// <summary>Nothing is known.</summary>
    public static BookSource Unknown { get; } = new();

    /// <summary>Whether nothing is known: a figure is traceable only to a book.</summary>
    public bool IsUnknown => string.IsNullOrWhiteSpace(Title);

    /// <summary>This source with what it leaves out taken from another: a figure's own letter, its page's title.</summary>
    public BookSource Within(BookSource page) =>
        new(Title ?? page.Title, Edition ?? page.Edition, Page ?? page.Page, Figure ?? page.Figure);

    /// <summary>Such as <c>Dipper workshop book, 2nd edition, page 14, K</c>; <see cref="NoSource"/> when the book is unknown.</summary>
    public override string ToString()
    {
        var place = string.Join(
            ", ",
            new[] { Title, Edition, Page is null ? null : Texts.Say("book.source.page", Page), Figure }.Where(p =>
                !string.IsNullOrWhiteSpace(p)
            )
        );
        return !IsUnknown ? place
            : place.Length == 0 ? NoSource
            : $"{NoSource} ({place})";
    }
}
