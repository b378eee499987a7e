using Plumbmark.Inspection.Journal;

namespace Plumbmark.Store;

/// <summary>A journal entry with its place in the car's journal.</summary>
/// <param name="Sequence">Its place: 1 for the first; the order that counts.</param>
/// <param name="Together">The place of the first entry that was sent with it; an undo takes back all of them.</param>
/// <param name="Entry">The entry.</param>
public sealed record KeptEntry(long Sequence, long Together, JournalEntry Entry);
