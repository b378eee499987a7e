namespace Plumbmark.Inspection.Road;

/// <summary>What of a part or place is off its drawing.</summary>
public enum PartQuantity
{
    /// <summary>A place, forward.</summary>
    Forward,

    /// <summary>A place, away from the centre line.</summary>
    Out,

    /// <summary>A place, up; for the stub axle, set higher on the upright.</summary>
    Up,

    /// <summary>An arm in two halves: its front half's length.</summary>
    FrontHalf,

    /// <summary>An arm in two halves: its rear half's length.</summary>
    RearHalf,

    /// <summary>An arm in one piece: how far its outer joint lies ahead of the middle between its eyes.</summary>
    Ahead,

    /// <summary>An arm in one piece: its reach from the line through its eyes.</summary>
    Reach,

    /// <summary>A length between joints.</summary>
    Length,

    /// <summary>The stub axle turned toward more camber.</summary>
    Camber,

    /// <summary>The stub axle turned toward more toe-in.</summary>
    ToeIn,
}
