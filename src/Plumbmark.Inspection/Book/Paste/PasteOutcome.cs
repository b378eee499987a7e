using System.Diagnostics;

namespace Plumbmark.Inspection.Book.Paste;

/// <summary>What became of a pasted block: figures, or every fault with its row and column. Nothing is taken in part.</summary>
public abstract record PasteOutcome
{
    private PasteOutcome() { }

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<Accepted, T> accepted, Func<Refused, T> refused) =>
        this switch
        {
            Accepted a => accepted(a),
            Refused r => refused(r),
            _ => throw new UnreachableException(),
        };

    /// <summary>Every row is a figure.</summary>
    /// <param name="Dimensions">The figures.</param>
    public sealed record Accepted(IReadOnlyList<BookDimension> Dimensions) : PasteOutcome;

    /// <summary>Some rows are not understood.</summary>
    /// <param name="Faults">One sentence each, with row and column.</param>
    public sealed record Refused(IReadOnlyList<PasteFault> Faults) : PasteOutcome;
}
