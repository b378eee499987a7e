namespace Plumbmark.Engine.Uncertainty;

/// <summary>What a measured value says about a limit; undecided has equal rank.</summary>
public enum Conformity
{
    /// <summary>The measurement is too uncertain to say.</summary>
    Undecided,

    /// <summary>Within the limit, with the probability the rule asks for.</summary>
    Conforms,

    /// <summary>Beyond the limit, with the probability the rule asks for.</summary>
    DoesNotConform,
}
