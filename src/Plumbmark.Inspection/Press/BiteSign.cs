namespace Plumbmark.Inspection.Press;

/// <summary>What was seen or heard in a bite. Each of them stops the job.</summary>
public enum BiteSign
{
    /// <summary>A tick or a crack was heard.</summary>
    Tick,

    /// <summary>Paint or scale flaked off somewhere unexpected.</summary>
    Flaking,

    /// <summary>The load fell while the ram went on.</summary>
    LoadFell,

    /// <summary>The part moved sideways or turned: the load was not in the plane of the bend.</summary>
    WrongPlane,

    /// <summary>A wall buckled or a mark of the block was left.</summary>
    Buckled,
}
