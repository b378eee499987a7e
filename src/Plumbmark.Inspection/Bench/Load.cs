namespace Plumbmark.Inspection.Bench;

/// <summary>A force as a person wrote it, for example the weight on a spring.</summary>
/// <param name="Number">The number before the unit, zero or more.</param>
/// <param name="Unit">The unit it was written in.</param>
public sealed record Load(decimal Number, LoadUnit Unit)
{
    /// <summary>One pound-force: 0.45359237 kg x 9.80665 m/s², exactly (NIST SP 811, B.8).</summary>
    internal const double PoundForceNewtons = 0.45359237 * StandardGravity;

    private const double StandardGravity = 9.80665;

    /// <summary>Newtons.</summary>
    public double Newtons =>
        (double)Number
        * Unit switch
        {
            LoadUnit.PoundForce => PoundForceNewtons,
            LoadUnit.KilogramForce => StandardGravity,
            _ => 1,
        };
}
