namespace Plumbmark.Store;

/// <summary>The journal file cannot be used as it is (not ours, newer, damaged, not writable). The message is one sentence for a person.</summary>
public sealed class StoreUnusableException : Exception
{
    /// <summary>Tells why.</summary>
    public StoreUnusableException(string sentence)
        : base(sentence) { }

    /// <summary>Tells why, and keeps what the system said.</summary>
    public StoreUnusableException(string sentence, Exception cause)
        : base(sentence, cause) { }
}
