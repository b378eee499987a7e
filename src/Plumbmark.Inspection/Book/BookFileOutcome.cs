using System.Diagnostics;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Book;

/// <summary>What became of reading a book file: accepted as a whole, or refused with every fault.</summary>
public abstract record BookFileOutcome
{
    private BookFileOutcome() { }

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<IReadOnlyList<BookPage>, T> accepted, Func<IReadOnlyList<Fault>, T> refused) =>
        this switch
        {
            Accepted a => accepted(a.Pages),
            Refused r => refused(r.Faults),
            _ => throw new UnreachableException(),
        };

    /// <summary>The file holds book pages. That they can be read says nothing of whether they are right.</summary>
    /// <param name="Pages">The pages.</param>
    public sealed record Accepted(IReadOnlyList<BookPage> Pages) : BookFileOutcome;

    /// <summary>The file does not hold book pages.</summary>
    /// <param name="Faults">Every fault, in the order of the file.</param>
    public sealed record Refused(IReadOnlyList<Fault> Faults) : BookFileOutcome;
}
