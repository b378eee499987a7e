namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>Which way a point must go, on the car's own sides.</summary>
public enum MoveDirection
{
    /// <summary>Towards the front.</summary>
    Forward,

    /// <summary>Towards the rear.</summary>
    Rearward,

    /// <summary>Towards the car's left.</summary>
    Left,

    /// <summary>Towards the car's right.</summary>
    Right,

    /// <summary>Up.</summary>
    Up,

    /// <summary>Down.</summary>
    Down,
}
