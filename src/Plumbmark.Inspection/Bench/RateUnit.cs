namespace Plumbmark.Inspection.Bench;

/// <summary>The units a spring rate is written in.</summary>
public enum RateUnit
{
    /// <summary>lbf/in.</summary>
    PoundForcePerInch,

    /// <summary>N/mm.</summary>
    NewtonPerMillimetre,
}
