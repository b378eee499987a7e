namespace Plumbmark.Store;

/// <summary>The journal file cannot be used as it is (not ours, newer, damaged, not writable). The message is one sentence for a person.</summary>
public sealed class StoreUnusableException : Exception
{
    /// <summary>Tells why.</summary>
    public StoreUnusableException(string sentence, StoreTrouble trouble = StoreTrouble.Other)
        : base(sentence) => Trouble = trouble;

    /// <summary>Tells why, and keeps what the system said.</summary>
    public StoreUnusableException(string sentence, Exception cause, StoreTrouble trouble = StoreTrouble.Other)
        : base(sentence, cause) => Trouble = trouble;

    /// <summary>Why, for a program.</summary>
    public StoreTrouble Trouble { get; }
}
