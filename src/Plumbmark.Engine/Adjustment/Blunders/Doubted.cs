namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>A reading or a point that an explanation takes to be wrong. It is doubted, never corrected.</summary>
/// <param name="ReadingId">The doubted reading; null when a point is doubted.</param>
/// <param name="Point">The doubted point; null when a reading is doubted.</param>
/// <param name="Kind">The slip.</param>
/// <param name="SizeMetres">Observed − believed, metres; for a point the length of its displacement.</param>
/// <param name="Believed">The reading as it was probably meant; null for a free amount or a point.</param>
public sealed record Doubted(string? ReadingId, string? Point, BlunderKind Kind, double SizeMetres, Observation? Believed)
{
    /// <summary>What is doubted, whatever the slip.</summary>
    internal string Subject => ReadingId is not null ? $"r {ReadingId}" : $"p {Point}";
}
