using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Bench;

/// <summary>One of the types of a part that the maker fitted: they may look alike and differ in one dimension.</summary>
/// <param name="Id">Its name in the file.</param>
/// <param name="Kind">Which part.</param>
/// <param name="Name">What it is called, such as <c>early type</c>.</param>
/// <param name="Serials">The cars it was fitted to; null when not known.</param>
/// <param name="Numbers">Numbers known to be cast or stamped on it.</param>
/// <param name="Figures">Its dimensions.</param>
public sealed record PartVariant(
    string Id,
    PartKind Kind,
    string Name,
    SerialRange? Serials = null,
    IReadOnlyList<string>? Numbers = null,
    IReadOnlyList<BookFigure>? Figures = null
)
{
    /// <summary>Numbers known to be on it; empty when none.</summary>
    public IReadOnlyList<string> Numbers { get; init; } = Numbers ?? [];

    /// <summary>Its dimensions; empty when none is known.</summary>
    public IReadOnlyList<BookFigure> Figures { get; init; } = Figures ?? [];

    /// <summary>Whether it was fitted to a car; null when that cannot be told, which is not a no.</summary>
    /// <param name="serial">The car's number; null when unknown.</param>
    public bool? IsFittedTo(SerialNumber? serial) =>
        Serials?.Contains(serial) switch
        {
            SerialFit.Applies => true,
            SerialFit.DoesNotApply => false,
            _ => null,
        };

    /// <summary>The figure for a dimension; null when the book has none.</summary>
    public BookFigure? Figure(string dimension) => Figures.FirstOrDefault(f => f.Dimension == dimension);
}
