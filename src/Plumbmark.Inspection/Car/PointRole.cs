namespace Plumbmark.Inspection.Car;

/// <summary>What a point carries. Suspension, spring and steering points must be true before a frame is called true.</summary>
public enum PointRole
{
    /// <summary>A wishbone, fulcrum or shock-absorber pick-up.</summary>
    Suspension,

    /// <summary>A spring or axle mount.</summary>
    Spring,

    /// <summary>A steering box, rack or idler mount.</summary>
    Steering,

    /// <summary>An engine, gearbox or final-drive mount.</summary>
    Engine,

    /// <summary>A body mount.</summary>
    Body,

    /// <summary>Anything else: a horn, a crossmember end, a jig hole.</summary>
    Other,
}
