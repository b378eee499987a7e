using System.Diagnostics;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>How far a figure is believed. What was printed is kept whatever the status.</summary>
public abstract record FigureStatus
{
    private FigureStatus() { }

    /// <summary>It stands as it is printed.</summary>
    public static FigureStatus AsPrinted { get; } = new Printed();

    /// <summary>It stands as it is printed.</summary>
    public sealed record Printed : FigureStatus;

    /// <summary>It is not believed, and is left out until somebody knows better.</summary>
    /// <param name="Reason">Why.</param>
    /// <param name="Evidence">What shows it; null when nothing does yet.</param>
    public sealed record Doubted(string Reason, string? Evidence = null) : FigureStatus;

    /// <summary>It is wrong, and another value is used in its place, knowingly.</summary>
    /// <param name="Value">What is used.</param>
    /// <param name="Reason">Why.</param>
    /// <param name="Evidence">What shows it; null when nothing is named.</param>
    public sealed record Corrected(Amount Value, string Reason, string? Evidence = null) : FigureStatus;

    /// <summary>No book says it: it was measured on another car.</summary>
    /// <param name="Car">Which car, in words.</param>
    public sealed record MeasuredElsewhere(string Car) : FigureStatus;

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(
        Func<Printed, T> printed,
        Func<Doubted, T> doubted,
        Func<Corrected, T> corrected,
        Func<MeasuredElsewhere, T> measured
    ) =>
        this switch
        {
            Printed p => printed(p),
            Doubted d => doubted(d),
            Corrected c => corrected(c),
            MeasuredElsewhere m => measured(m),
            _ => throw new UnreachableException(),
        };

    /// <summary>One sentence for a person.</summary>
    public string Words =>
        Match(
            _ => Texts.Say("book.figure-status.as-printed"),
            d => Texts.Say("book.figure-status.doubted", d.Reason, Shown(d.Evidence)),
            c => Texts.Say("book.figure-status.corrected-to", AmountText.Write(c.Value), c.Reason, Shown(c.Evidence)),
            m => Texts.Say("book.figure-status.not-from-a-book-measured", m.Car)
        );

    private static string Shown(string? evidence) => string.IsNullOrWhiteSpace(evidence) ? "" : $" ({evidence.TrimEnd('.')})";
}
