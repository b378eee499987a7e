using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Press;

/// <summary>How the part lies in the press, as it was really set up.</summary>
/// <param name="LeftArm">From the left support to the ram.</param>
/// <param name="RightArm">From the ram to the right support.</param>
/// <param name="Ram">Place of the ram along the part; null when not measured.</param>
/// <param name="Lever">How far the place where the part is measured moves for each unit of set under the ram; 1 when it is measured there.</param>
public sealed record PressSetUp(Length LeftArm, Length RightArm, Length? Ram = null, double Lever = 1)
{
    /// <summary>Whether the travel is read by a gauge on the part itself; otherwise it is the ram's, with all that gives below it.</summary>
    public bool TravelAtPart { get; init; }
}
