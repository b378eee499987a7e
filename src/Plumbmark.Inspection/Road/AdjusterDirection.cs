namespace Plumbmark.Inspection.Road;

/// <summary>Which way more of an adjuster moves its pivots.</summary>
public enum AdjusterDirection
{
    /// <summary>Away from the centre line.</summary>
    Out,

    /// <summary>Toward the centre line.</summary>
    In,

    /// <summary>Forward.</summary>
    Forward,

    /// <summary>Rearward.</summary>
    Rearward,

    /// <summary>Up.</summary>
    Up,

    /// <summary>Down.</summary>
    Down,
}
