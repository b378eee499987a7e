namespace Plumbmark.Inspection.Bench;

/// <summary>What a dimension tells about a part: whether bending changes it, and whether it has a size of its own or should be nothing.</summary>
public enum DimensionNature
{
    /// <summary>A size or position that bending changes: compared with the book and with the other side.</summary>
    Shape,

    /// <summary>Should be nothing, and bending changes it: a bow, a twist, a run-out.</summary>
    Trueness,

    /// <summary>A bore's diameter.</summary>
    Diameter,

    /// <summary>Should be nothing, and wear changes it: ovality, taper.</summary>
    Roundness,

    /// <summary>Play of a pin at the most worn place: should not be large.</summary>
    Clearance,

    /// <summary>Grip on a bush at the widest place: should not be small.</summary>
    Grip,

    /// <summary>A spring's rate or length: compared with the book and with the other side.</summary>
    Spring,
}
