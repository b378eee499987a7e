using System.Diagnostics;

namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Whether some reading or point is to be doubted, and which.</summary>
public abstract record BlunderOutcome
{
    private BlunderOutcome() { }

    /// <summary>The readings agree as well as their uncertainties say, or disagree too little to accuse one.</summary>
    public sealed record NothingDoubted : BlunderOutcome;

    /// <summary>One explanation is much likelier than any other.</summary>
    /// <param name="Best">The explanation, with one or two things that are wrong.</param>
    /// <param name="Others">The next best, in order.</param>
    public sealed record Named(Explanation Best, IReadOnlyList<Explanation> Others) : BlunderOutcome;

    /// <summary>Something is wrong, but several explanations are about equally good: more readings are needed to tell which.</summary>
    /// <param name="Candidates">The explanations that cannot be told apart, best first.</param>
    public sealed record ProvableNotLocatable(IReadOnlyList<Explanation> Candidates) : BlunderOutcome;

    /// <summary>
    /// The readings disagree more than their uncertainties allow, and neither one nor two blunders account for it: the uncertainties are too small, or many
    /// readings are wrong.
    /// </summary>
    /// <param name="Best">What helped most, best first; none of it is enough.</param>
    public sealed record Unexplained(IReadOnlyList<Explanation> Best) : BlunderOutcome;

    /// <summary>Takes the one road that applies.</summary>
    public T Match<T>(
        Func<NothingDoubted, T> nothingDoubted,
        Func<Named, T> named,
        Func<ProvableNotLocatable, T> provableNotLocatable,
        Func<Unexplained, T> unexplained
    ) =>
        this switch
        {
            NothingDoubted o => nothingDoubted(o),
            Named o => named(o),
            ProvableNotLocatable o => provableNotLocatable(o),
            Unexplained o => unexplained(o),
            _ => throw new UnreachableException(),
        };
}
