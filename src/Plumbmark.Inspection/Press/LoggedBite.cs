using Plumbmark.Engine.Bending;

namespace Plumbmark.Inspection.Press;

/// <summary>A bite with what it tells. All lengths at the ram, m, except <paramref name="LeftMetres"/>.</summary>
/// <param name="Record">The bite as it was read.</param>
/// <param name="SetMetres">What it set.</param>
/// <param name="TotalSetMetres">What all bites set, this one included.</param>
/// <param name="LeftMetres">How far the part is still out, where it is measured; below 0 is past straight.</param>
/// <param name="Expected">The set that was expected of it: middle and 95 % interval.</param>
/// <param name="SetNothing">Whether nothing set that can be told from reading error.</param>
/// <param name="StrainSpent">Largest strain of the outermost metal in the bites so far; the accident has used up some before.</param>
/// <param name="Stops">Why it ends the job; empty when it does not.</param>
public sealed record LoggedBite(
    BiteRecord Record,
    double SetMetres,
    double TotalSetMetres,
    double LeftMetres,
    Interval Expected,
    bool SetNothing,
    double StrainSpent,
    IReadOnlyList<StopReason> Stops
)
{
    /// <summary>Travel that came back, m: the spring-back, or only a lower bound of it when nothing set.</summary>
    public double SpringBackMetres => Record.Travel.Metres - SetMetres;
}
