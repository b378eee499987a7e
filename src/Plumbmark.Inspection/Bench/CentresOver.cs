namespace Plumbmark.Inspection.Bench;

/// <summary>Between what the distance of two bores was measured.</summary>
public enum CentresOver
{
    /// <summary>From centre to centre, with cones or a trammel.</summary>
    Centre,

    /// <summary>Between the near edges: half of both diameters is added.</summary>
    Inside,

    /// <summary>Over the far edges: half of both diameters is taken off.</summary>
    Outside,
}
