using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Press;

/// <summary>When to stop, and how well things are read. Everything may be changed; nothing here is a maker's limit unless its owner says so.</summary>
/// <param name="Straight">How far from straight is straight enough; null means no limit is known, and then nothing is called straight.</param>
/// <param name="Source">Whose limit it is.</param>
/// <param name="Strain">Largest strain of the outermost metal while it is bent back; the accident has used up about as much before.</param>
/// <param name="Bites">Most bites.</param>
/// <param name="Reading">Standard uncertainty of one reading of straightness.</param>
/// <param name="Travel">Standard uncertainty of one reading of travel.</param>
public sealed record PressLimits(Length? Straight, LimitSource Source, double Strain, int Bites, Length Reading, Length Travel)
{
    /// <summary>What is used until somebody chooses.</summary>
    /// <remarks>
    /// 1/32 in on a flat: common practice, no source. 5 % outermost strain: the forming strain beyond which ASME VIII-1, UCS-79(d), asks for heat
    /// treatment (from memory), taken over because no figure for cold straightening was found. 8 bites and 0.1 mm: own choice.
    /// </remarks>
    public static PressLimits Usual { get; } =
        new(
            Length.FromFraction(0, 1, 32, LengthUnit.Inch),
            LimitSource.Practice,
            0.05,
            8,
            Length.FromMillimetres(0.1m),
            Length.FromMillimetres(0.1m)
        );
}
