namespace Plumbmark.Inspection.Bench;

/// <summary>The units a load is written in.</summary>
public enum LoadUnit
{
    /// <summary>N.</summary>
    Newton,

    /// <summary>lbf; lb is taken as this.</summary>
    PoundForce,

    /// <summary>kgf; kg is taken as this.</summary>
    KilogramForce,
}
