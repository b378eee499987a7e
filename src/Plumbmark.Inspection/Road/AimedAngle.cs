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
    /// <summary>Whether the angle would be within its limits with the settings; null when it has none.</summary>
    public bool? IsWithin => Least is null && Most is null ? null : !(After < Least) && !(After > Most);

    /// <summary>What is left beyond the limits, with its sign; zero within them or without any.</summary>
    public double LeftOver =>
        After > Most ? After - Most.Value
        : After < Least ? After - Least.Value
        : 0;
}
