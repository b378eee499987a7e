using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>One angle that the adjusters of a side aim at. Radians.</summary>
/// <param name="Kind">Camber, castor, or toe-in of this one wheel.</param>
/// <param name="Aim">What to aim at.</param>
/// <param name="Least">The least allowed; null when not limited below.</param>
/// <param name="Most">The most allowed; null when not limited above.</param>
/// <param name="Before">As it is set now.</param>
/// <param name="After">As it would be with the settings.</param>
/// <param name="U">Standard uncertainty of both.</param>
public sealed record AimedAngle(FigureKind Kind, double Aim, double? Least, double? Most, double Before, double After, double U)
{
    /// <summary>
    /// The verdict on the angle with the settings; null when it has no limits. Toe is set by reading it at the wheels, so that how sure its figure is does not matter: it is within or it is not.
    /// </summary>
    public Verdict? Verdict =>
        Least is null && Most is null ? null
        : Kind == FigureKind.ToeIn ? (LeftOver == 0 ? Floor.Verdict.True : Floor.Verdict.Out)
        : RoadFigures.VerdictOf(RoadFigures.Within(Least, Most, After, U)!.Value, RoadFigures.NotBeyond(Least, Most, After, U)!.Value);

    /// <summary>What is left beyond the limits, with its sign; zero within them or without any.</summary>
    public double LeftOver =>
        After > Most ? After - Most.Value
        : After < Least ? After - Least.Value
        : 0;
}
