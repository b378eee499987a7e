using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Book;

/// <summary>A page of figures from one place in one book, for one lot of cars: what owners share with each other.</summary>
/// <param name="Id">Its name among the pages.</param>
/// <param name="Title">What it is about.</param>
/// <param name="Units">The unit of a figure printed without one.</param>
public sealed record BookPage(string Id, string Title, LengthUnit Units)
{
    /// <summary>Where it is printed.</summary>
    public BookSource Source { get; init; } = BookSource.Unknown;

    /// <summary>The cars it is meant for.</summary>
    public AppliesTo AppliesTo { get; init; } = AppliesTo.EveryCar;

    /// <summary>The figures, in the order of the page.</summary>
    public IReadOnlyList<BookDimension> Dimensions { get; init; } = [];

    /// <summary>Chains that the drawing closes.</summary>
    public IReadOnlyList<BookChain> Chains { get; init; } = [];

    /// <summary>Anything else; null when there is nothing.</summary>
    public string? Note { get; init; }

    /// <summary>The figure of that name; null when there is none.</summary>
    public BookDimension? Dimension(string id) => Dimensions.FirstOrDefault(d => d.Id == id);

    /// <summary>Where a figure of this page is printed.</summary>
    public BookSource SourceOf(BookDimension dimension) => dimension.Source.Within(Source);

    /// <summary>The page with one figure in place of the one of the same name.</summary>
    public BookPage With(BookDimension dimension) =>
        this with
        {
            Dimensions = [.. Dimensions.Select(d => d.Id == dimension.Id ? dimension : d)],
        };
}
