namespace Plumbmark.Engine.Fits;

/// <summary>What became of fitting a shape to points: the fit, or the fact about the points that prevents one.</summary>
/// <typeparam name="TFit">What a successful fit holds, for example <see cref="PlaneFit"/>.</typeparam>
public abstract record FitOutcome<TFit>
    where TFit : class
{
    private FitOutcome() { }

    /// <summary>The points determine the shape.</summary>
    /// <param name="Fit">The shape with its residuals.</param>
    public sealed record Fitted(TFit Fit) : FitOutcome<TFit>;

    /// <summary>Fewer points than the shape needs.</summary>
    /// <param name="Given">How many there are.</param>
    /// <param name="Needed">How many the shape needs.</param>
    public sealed record TooFewPoints(int Given, int Needed) : FitOutcome<TFit>;

    /// <summary>A coordinate is NaN or infinite.</summary>
    /// <param name="Index">The first such point.</param>
    public sealed record NotANumber(int Index) : FitOutcome<TFit>;

    /// <summary>The points do not determine the shape, however many there are.</summary>
    /// <param name="Why">In which way.</param>
    public sealed record Undetermined(Degeneracy Why) : FitOutcome<TFit>;

    /// <summary>The search stopped without settling; nothing is claimed about the shape.</summary>
    /// <param name="Steps">How many steps were tried.</param>
    public sealed record NotSettled(int Steps) : FitOutcome<TFit>;

    /// <summary>Answers every case.</summary>
    public TResult Match<TResult>(
        Func<TFit, TResult> fitted,
        Func<int, int, TResult> tooFewPoints,
        Func<int, TResult> notANumber,
        Func<Degeneracy, TResult> undetermined,
        Func<int, TResult> notSettled
    ) =>
        this switch
        {
            Fitted f => fitted(f.Fit),
            TooFewPoints t => tooFewPoints(t.Given, t.Needed),
            NotANumber n => notANumber(n.Index),
            Undetermined u => undetermined(u.Why),
            NotSettled n => notSettled(n.Steps),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The fit, or <see langword="null"/> where the points do not give one.</summary>
    public TFit? FitOrNull => (this as Fitted)?.Fit;
}
