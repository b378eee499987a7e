namespace Plumbmark.Engine.Uncertainty;

/// <summary>What came of a Monte Carlo propagation of one result.</summary>
public abstract record MonteCarloOutcome
{
    private MonteCarloOutcome() { }

    /// <summary>Every trial had a result.</summary>
    /// <param name="Distribution">Estimate, standard uncertainty and intervals.</param>
    public sealed record Propagated(OutputDistribution Distribution) : MonteCarloOutcome;

    /// <summary>Some trials had none (a linkage that does not close), so that what is left would say too little.</summary>
    /// <param name="Count">How many had none.</param>
    /// <param name="Trials">Out of how many.</param>
    public sealed record Undefined(int Count, int Trials) : MonteCarloOutcome;

    /// <summary>Goes on with whichever of the two it is.</summary>
    public T Match<T>(Func<OutputDistribution, T> propagated, Func<Undefined, T> undefined)
    {
        ArgumentNullException.ThrowIfNull(propagated);
        ArgumentNullException.ThrowIfNull(undefined);
        return this switch
        {
            Propagated p => propagated(p.Distribution),
            Undefined u => undefined(u),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
