namespace Plumbmark.Engine.Adjustment;

/// <summary>One of the three directions of ISO 8855: x forward, y to the car's own left, z up.</summary>
public enum Axis
{
    /// <summary>Forward.</summary>
    X,

    /// <summary>To the car's own left.</summary>
    Y,

    /// <summary>Up.</summary>
    Z,
}
