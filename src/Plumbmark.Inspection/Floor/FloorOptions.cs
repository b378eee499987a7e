namespace Plumbmark.Inspection.Floor;

/// <summary>What the person may choose about the answer: never the readings, never the rule of the verdict.</summary>
public sealed record FloorOptions
{
    /// <summary>What is taken when nothing is chosen.</summary>
    public static FloorOptions Default { get; } = new();

    /// <summary>Minutes per kind of reading.</summary>
    public ReadingMinutes Minutes { get; init; } = new();

    /// <summary>How many next readings to propose at most; 0 leaves the proposals out, which is quicker.</summary>
    public int NextReadings { get; init; } = 5;
}
