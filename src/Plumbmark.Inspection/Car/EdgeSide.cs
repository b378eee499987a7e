namespace Plumbmark.Inspection.Car;

/// <summary>An edge of a hole as seen from its centre.</summary>
public enum EdgeSide
{
    /// <summary>The front edge.</summary>
    Front,

    /// <summary>The left edge, the car's own left.</summary>
    Left,

    /// <summary>The rear edge.</summary>
    Rear,

    /// <summary>The right edge.</summary>
    Right,
}
