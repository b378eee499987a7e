namespace Plumbmark.Inspection.Press;

/// <summary>The shape of the part where it is bent, as it lies under the ram.</summary>
public enum SectionShape
{
    /// <summary>A flat or square bar: width, depth.</summary>
    Rectangle,

    /// <summary>A solid round bar: depth is the diameter.</summary>
    Round,

    /// <summary>A round tube: depth is the outside diameter; wall.</summary>
    Tube,

    /// <summary>A rectangular box: width, depth, wall.</summary>
    Box,

    /// <summary>A channel with its web standing: width of a flange, depth, wall of the web, flange.</summary>
    Channel,

    /// <summary>A channel lying with its web under the ram: width over the web, depth, wall.</summary>
    ChannelWebAtRam,

    /// <summary>A channel lying with its legs towards the ram: width over the web, depth, wall.</summary>
    ChannelLegsAtRam,

    /// <summary>An I with its web standing: width of a flange, depth, wall of the web, flange.</summary>
    I,

    /// <summary>A hat with its crown under the ram: width over the crown, depth, wall, foot.</summary>
    Hat,
}
