namespace Plumbmark.Reliability.Disk;

/// <summary>What goes wrong at a step.</summary>
public enum DiskFault
{
    /// <summary>The call fails once, as a failing drive does; a write may have been done in part.</summary>
    Fails,

    /// <summary>The disk is full at this step and has room again afterwards.</summary>
    FullOnce,

    /// <summary>The disk is full from this step on.</summary>
    FullFromHere,

    /// <summary>Every call fails from this step on: the drive was pulled out.</summary>
    Unplugged,

    /// <summary>Power goes. Of what was not synced, any part may be on the disk, a write torn in the middle.</summary>
    PowerCut,

    /// <summary>The process dies. What was written is there, synced or not.</summary>
    Killed,
}
