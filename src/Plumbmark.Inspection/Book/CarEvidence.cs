using Plumbmark.Inspection.Bench;

namespace Plumbmark.Inspection.Book;

/// <summary>What one dimension measured on one car.</summary>
/// <param name="Car">Which car, in words; one car counts once, by its latest figure.</param>
/// <param name="Value">What was measured.</param>
/// <param name="Note">By whom, with what, in which state; null when not told.</param>
public sealed record CarEvidence(string Car, Amount Value, string? Note = null);
