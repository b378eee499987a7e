namespace Plumbmark.Inspection.Journal;

/// <summary>One line of a car's journal.</summary>
/// <param name="Id">Its own name, given where it was written, so that a phone may send it twice and it is kept once.</param>
/// <param name="At">When it was written, by the clock of the device that wrote it. Order is the journal's, not the clock's.</param>
/// <param name="By">The device or person, when told; null otherwise.</param>
/// <param name="Act">What was done.</param>
public sealed record JournalEntry(Guid Id, DateTimeOffset At, string? By, Act Act);
