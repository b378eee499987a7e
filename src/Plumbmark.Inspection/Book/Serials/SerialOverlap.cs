using System.Diagnostics;

namespace Plumbmark.Inspection.Book;

/// <summary>What two ranges of serial numbers have in common.</summary>
public abstract record SerialOverlap
{
    private SerialOverlap() { }

    /// <summary>No number lies in both.</summary>
    public static SerialOverlap Nothing { get; } = new None();

    /// <summary>The ranges are of different series, or meet inside one running number.</summary>
    public static SerialOverlap NotComparable { get; } = new CannotBeCompared();

    /// <summary>No number lies in both.</summary>
    public sealed record None : SerialOverlap;

    /// <summary>Numbers that lie in both.</summary>
    /// <param name="Range">All of them.</param>
    public sealed record Shared(SerialRange Range) : SerialOverlap;

    /// <summary>Nothing says whether a number lies in both.</summary>
    public sealed record CannotBeCompared : SerialOverlap;

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<None, T> none, Func<Shared, T> shared, Func<CannotBeCompared, T> cannotBeCompared) =>
        this switch
        {
            None n => none(n),
            Shared s => shared(s),
            CannotBeCompared c => cannotBeCompared(c),
            _ => throw new UnreachableException(),
        };
}
