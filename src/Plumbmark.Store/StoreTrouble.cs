namespace Plumbmark.Store;

/// <summary>Why a journal file cannot be used as it is.</summary>
public enum StoreTrouble
{
    /// <summary>None of the others.</summary>
    Other,

    /// <summary>It is no journal of this program.</summary>
    NotOurs,

    /// <summary>A newer version of the program wrote it.</summary>
    Newer,

    /// <summary>Part of what was written in it cannot be read back.</summary>
    Damaged,

    /// <summary>There is no right to write it, or it stands on something that cannot be written.</summary>
    NotWritable,

    /// <summary>Another program has been writing to it for too long.</summary>
    Busy,

    /// <summary>The disk is full.</summary>
    Full,
}
