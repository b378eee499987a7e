namespace Plumbmark.Engine.Uncertainty;

/// <summary>Accuracy class printed on a tape's first decimetre, after Directive 2014/32/EU, Annex X (MI-008), chapter I.</summary>
public enum TapeClass
{
    /// <summary>± (0.1 + 0.1 L) mm.</summary>
    I,

    /// <summary>± (0.3 + 0.2 L) mm, the usual good steel tape.</summary>
    II,

    /// <summary>± (0.6 + 0.4 L) mm.</summary>
    III,
}
