using System.Diagnostics;

namespace Plumbmark.Inspection.Book;

/// <summary>What the book says of one thing for one car.</summary>
public abstract record FigureChoice
{
    private FigureChoice() { }

    /// <summary>One figure applies, or several that agree.</summary>
    /// <param name="Figure">The figure to use: of those that agree, the first with a source.</param>
    /// <param name="Agreeing">Other figures that apply and agree with it.</param>
    public sealed record Applies(FigureOnPage Figure, IReadOnlyList<FigureOnPage> Agreeing) : FigureChoice;

    /// <summary>Several figures apply and do not agree; none is used.</summary>
    /// <param name="Figures">All that apply.</param>
    public sealed record Disagree(IReadOnlyList<FigureOnPage> Figures) : FigureChoice;

    /// <summary>Figures may apply, but the car's number or equipment does not tell which.</summary>
    /// <param name="Figures">Those that may.</param>
    public sealed record CannotTell(IReadOnlyList<FigureOnPage> Figures) : FigureChoice;

    /// <summary>The book names the thing for this car and gives no figure that is believed.</summary>
    /// <param name="Figures">What is there: figures left empty, and doubted ones.</param>
    public sealed record Missing(IReadOnlyList<FigureOnPage> Figures) : FigureChoice;

    /// <summary>All figures are for other cars.</summary>
    /// <param name="Figures">Those figures.</param>
    public sealed record ForOtherCars(IReadOnlyList<FigureOnPage> Figures) : FigureChoice;

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(
        Func<Applies, T> applies,
        Func<Disagree, T> disagree,
        Func<CannotTell, T> cannotTell,
        Func<Missing, T> missing,
        Func<ForOtherCars, T> forOtherCars
    ) =>
        this switch
        {
            Applies c => applies(c),
            Disagree c => disagree(c),
            CannotTell c => cannotTell(c),
            Missing c => missing(c),
            ForOtherCars c => forOtherCars(c),
            _ => throw new UnreachableException(),
        };
}
