namespace Plumbmark.Inspection.Press;

/// <summary>The plane in which a line can show a bend.</summary>
public enum BendPlane
{
    /// <summary>In the direction of the ram.</summary>
    Ram,

    /// <summary>Across it.</summary>
    Side,
}
