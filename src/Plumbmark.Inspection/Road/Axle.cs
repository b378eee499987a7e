namespace Plumbmark.Inspection.Road;

/// <summary>A pair of wheels.</summary>
public enum Axle
{
    /// <summary>The front pair.</summary>
    Front,

    /// <summary>The rear pair.</summary>
    Rear,
}
