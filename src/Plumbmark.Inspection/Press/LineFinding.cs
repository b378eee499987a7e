using Plumbmark.Engine.Bending;

namespace Plumbmark.Inspection.Press;

/// <summary>What one line says.</summary>
/// <param name="Line">The line.</param>
/// <param name="Finding">Its bend.</param>
public sealed record LineFinding(ProfileLine Line, BendFinding Finding)
{
    /// <summary>The bend; null when there is none or it cannot be told.</summary>
    public Bend? Bend => Finding.Match<Bend?>(_ => null, _ => null, k => k.Bend, s => s.Bend);
}
