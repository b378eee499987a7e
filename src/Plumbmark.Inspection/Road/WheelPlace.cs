namespace Plumbmark.Inspection.Road;

/// <summary>One of the four wheels.</summary>
public enum WheelPlace
{
    /// <summary>Front left.</summary>
    FrontLeft,

    /// <summary>Front right.</summary>
    FrontRight,

    /// <summary>Rear left.</summary>
    RearLeft,

    /// <summary>Rear right.</summary>
    RearRight,
}
