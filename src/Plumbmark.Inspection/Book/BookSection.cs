namespace Plumbmark.Inspection.Book;

/// <summary>The book pages kept with a car, and what of the car they make a difference by.</summary>
/// <param name="Pages">The pages.</param>
/// <param name="Attributes">What the car is fitted with, where a page asks.</param>
public sealed record BookSection(IReadOnlyList<BookPage> Pages, IReadOnlyList<CarAttribute> Attributes)
{
    /// <summary>No pages.</summary>
    public static BookSection Empty { get; } = new([], []);

    /// <summary>Whether nothing is in it.</summary>
    public bool IsEmpty => Pages.Count == 0 && Attributes.Count == 0;

    /// <summary>The page of that name; null when there is none.</summary>
    public BookPage? Page(string id) => Pages.FirstOrDefault(p => p.Id == id);
}
