using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Paste;

/// <summary>One thing wrong with a pasted block.</summary>
/// <param name="Row">The line of the block, counted from 1; 0 for the block as a whole.</param>
/// <param name="Column">The heading of the column; null for the row as a whole.</param>
/// <param name="Sentence">What was found and what is allowed.</param>
public sealed record PasteFault(int Row, string? Column, string Sentence)
{
    /// <summary>The heading of the column, fit to print; null for the row as a whole.</summary>
    public string? Column { get; init; } = Column is null ? null : Printable.Of(Column);

    /// <summary>What was found and what is allowed; fit to print.</summary>
    public string Sentence { get; init; } = Printable.Of(Sentence);

    /// <summary>The place first, then the sentence.</summary>
    public override string ToString() =>
        Row == 0 ? Sentence
        : Column is null ? Texts.Say("book.paste-fault.row", Row, Sentence)
        : Texts.Say("book.paste-fault.row-2", Row, Column, Sentence);
}
