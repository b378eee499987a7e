namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>The forms that are compared: damage, and what looks like damage and is none.</summary>
internal enum DamageForm
{
    /// <summary>The middles leave the centre line from one station on.</summary>
    Sidesway,

    /// <summary>The middle of a rail or of both hangs below the line through the ends.</summary>
    Sag,

    /// <summary>One side is short from one station on.</summary>
    Mash,

    /// <summary>One rail stands ahead of the other.</summary>
    Diamond,

    /// <summary>One end leans against the other.</summary>
    Twist,

    /// <summary>One point, or the mount on it, is bent.</summary>
    Point,

    /// <summary>No damage: every length is wrong by the same share.</summary>
    TapeScale,

    /// <summary>No damage: the plumb line and the level do not agree, so that high points lean.</summary>
    Lean,
}
