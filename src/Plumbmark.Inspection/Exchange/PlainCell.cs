namespace Plumbmark.Inspection.Exchange;

/// <summary>A cell of a table to take elsewhere: a text, a number, or nothing. Nothing is not zero.</summary>
public abstract record PlainCell
{
    private PlainCell() { }

    /// <summary>What is not known.</summary>
    public static PlainCell Nothing { get; } = new Missing();

    /// <summary>A number, or nothing; its unit stands in the head of its column.</summary>
    public static PlainCell Of(double? value) => value is { } known ? new Number(known) : Nothing;

    /// <summary>A text, or nothing.</summary>
    public static PlainCell Of(string? text) => text is null ? Nothing : new Text(text);

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<string, T> text, Func<double, T> number, Func<T> nothing) =>
        this switch
        {
            Text t => text(t.Words),
            Number n => number(n.Value),
            Missing => nothing(),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>A text, shown as it is.</summary>
    public sealed record Text(string Words) : PlainCell;

    /// <summary>A number; its unit stands in the head of its column.</summary>
    public sealed record Number(double Value) : PlainCell;

    /// <summary>Nothing is known.</summary>
    public sealed record Missing : PlainCell;
}
