using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Road;

/// <summary>How far one part or place was found off its drawing: found minus drawn. A pick-up told here is used instead of what the Floor finds for it.</summary>
/// <param name="Id">Its own name.</param>
/// <param name="Part">What it is.</param>
/// <param name="Side">On which side.</param>
/// <param name="Amounts">The amounts, each with what it is an amount of.</param>
/// <param name="Sigma">Standard uncertainty of each length; null when not told, and then a quarter of a millimetre of common practice is taken.</param>
/// <param name="SigmaAngle">Standard uncertainty of each angle; null when not told, and then three minutes are taken.</param>
/// <param name="Note">Anything noted; null when nothing.</param>
/// <param name="Withdrawn">Why it was taken back; null while it stands.</param>
public sealed record PartDeviation(
    string Id,
    CornerPart Part,
    Side Side,
    IReadOnlyList<PartDeviation.Amount> Amounts,
    Length? Sigma = null,
    Angle? SigmaAngle = null,
    string? Note = null,
    string? Withdrawn = null
)
{
    // Common practice, no source: a caliper or a rule on a plate, read once.
    private const double UsualSigmaMetres = 0.25e-3;
    private const double UsualSigmaRadians = 3.0 / 60 * Math.PI / 180;

    /// <summary>One amount: a length, or an angle for the stub axle's turns.</summary>
    /// <param name="Quantity">What it is an amount of.</param>
    /// <param name="Length">The length; null for an angle.</param>
    /// <param name="Angle">The angle; null for a length.</param>
    public sealed record Amount(PartQuantity Quantity, Length? Length, Angle? Angle)
    {
        /// <summary>Metres or radians.</summary>
        public double Si => Length?.Metres ?? Angle?.Radians ?? 0;
    }

    /// <summary>Standard uncertainty of an amount, metres or radians.</summary>
    public double SigmaOf(Amount amount)
    {
        ArgumentNullException.ThrowIfNull(amount);
        return amount.Length is null ? SigmaAngle?.Radians ?? UsualSigmaRadians : Sigma?.Metres ?? UsualSigmaMetres;
    }
}
