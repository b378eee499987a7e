namespace Plumbmark.Engine.Adjustment;

/// <summary>One way in which all points can move together without any reading noticing.</summary>
public enum DatumMotion
{
    /// <summary>Forward and back.</summary>
    ShiftX,

    /// <summary>Left and right.</summary>
    ShiftY,

    /// <summary>Up and down.</summary>
    ShiftZ,

    /// <summary>About a line that points forward.</summary>
    TurnAboutX,

    /// <summary>About a line that points to the left.</summary>
    TurnAboutY,

    /// <summary>In plan.</summary>
    TurnAboutZ,
}
