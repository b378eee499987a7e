namespace Plumbmark.Inspection.Road;

/// <summary>A side of the car, its own, seen from the driver's seat.</summary>
public enum Side
{
    /// <summary>The car's left.</summary>
    Left,

    /// <summary>The car's right.</summary>
    Right,
}
