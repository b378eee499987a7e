using Plumbmark.Inspection.Bench;

namespace Plumbmark.Inspection.Book;

/// <summary>One figure of a book page: what it is about, what is printed, for which cars, and how far it is believed.</summary>
/// <param name="Id">Its name on the page, such as the letter in the drawing.</param>
/// <param name="Subject">What it is about.</param>
public sealed record BookDimension(string Id, BookSubject Subject)
{
    /// <summary>The printed figure; null when the book prints none.</summary>
    public Amount? Value { get; init; }

    /// <summary>The second column: the same in the other unit, as printed; null when there is none.</summary>
    public Amount? AlsoPrinted { get; init; }

    /// <summary>The printed tolerance; null when there is none.</summary>
    public PrintedTolerance? Tolerance { get; init; }

    /// <summary>Names of figures on this page that must equal this one ("must be equal" is often all that is printed).</summary>
    public IReadOnlyList<string> MustEqual { get; init; } = [];

    /// <summary>Whether the figure holds for both sides of the car.</summary>
    public bool IsBothSides { get; init; }

    /// <summary>Whether the car is built differently on its two sides here, so that left and right are not compared.</summary>
    public bool IsHanded { get; init; }

    /// <summary>The cars it is meant for, within those of its page.</summary>
    public AppliesTo AppliesTo { get; init; } = AppliesTo.EveryCar;

    /// <summary>What differs from the page's source.</summary>
    public BookSource Source { get; init; } = BookSource.Unknown;

    /// <summary>How far it is believed.</summary>
    public FigureStatus Status { get; init; } = FigureStatus.AsPrinted;

    /// <summary>The same dimension measured on cars.</summary>
    public IReadOnlyList<CarEvidence> Evidence { get; init; } = [];

    /// <summary>Anything else; null when there is nothing.</summary>
    public string? Note { get; init; }

    /// <summary>What is used: the printed figure, its correction, or nothing while it is doubted or not printed.</summary>
    public Amount? Used => Status.Match(_ => Value, _ => null, c => c.Value, _ => Value);

    /// <summary>What it says, on each side that it holds for.</summary>
    public IEnumerable<BookSubject> Subjects =>
        IsBothSides && Subject.Mirrored.Ordered != Subject.Ordered ? [Subject, Subject.Mirrored] : [Subject];
}
