namespace Plumbmark.Engine.Uncertainty;

/// <summary>From which probability a value counts as within its limit, and to which as beyond it; between them nothing is decided.</summary>
/// <remarks>
/// ISO 14253-1:2017 takes a conformance probability of 95 % unless agreed otherwise, for proving conformity and for proving
/// non-conformity alike; JCGM 106:2012, 8.3.2, calls it a guarded rule.
/// </remarks>
public sealed record DecisionRule
{
    private DecisionRule(double probability) => Probability = probability;

    /// <summary>95 % either way.</summary>
    public static DecisionRule Default { get; } = new(0.95);

    /// <summary>The probability asked for, above one half.</summary>
    public double Probability { get; }

    /// <summary>A rule that asks for this probability either way.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.5 and below 1.</exception>
    public static DecisionRule Asking(double probability)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(probability, 0.5);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(probability, 1);
        Demand.Number(probability);
        return new DecisionRule(probability);
    }

    /// <summary>Decides on the probability of being within.</summary>
    public Conformity Decide(double probabilityWithin)
    {
        Demand.Probability(probabilityWithin);
        return probabilityWithin >= Probability ? Conformity.Conforms
            : 1 - probabilityWithin >= Probability ? Conformity.DoesNotConform
            : Conformity.Undecided;
    }
}
