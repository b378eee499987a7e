namespace Plumbmark.Web.Floor;

/// <summary>A kind of reading as the entry form offers it.</summary>
/// <param name="Word">The word of the car file.</param>
/// <param name="Label">What the person reads.</param>
/// <param name="Ends">How many points the drawing asks for: two ends, one point, or a point beside a string.</param>
/// <param name="Hint">What it means, in one line.</param>
public sealed record EntryKind(string Word, string Label, EntryEnds Ends, string Hint)
{
    /// <summary>Every kind, the commonest first.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        new("plan", "Along the floor", EntryEnds.Two, "Tape between two plumb marks, or a trammel set level between the points."),
        new("direct", "Point to point", EntryEnds.Two, "Tape straight from point to point, however high they are."),
        new("height", "Height", EntryEnds.One, "Above the water level, laser or table. Up is plus."),
        new("rise", "Height step", EntryEnds.Two, "How much higher the second point is than the first."),
        new(
            "offset",
            "Off a string",
            EntryEnds.PointAndTwo,
            "Square distance of a mark from a string; plus to the left of the way along it."
        ),
        new(
            "drop",
            "Drop again",
            EntryEnds.One,
            "Lift the plumb line off, drop the point once more, and measure from the first mark to the new one."
        ),
    ];

    /// <summary>The kind of that word; the commonest when there is none.</summary>
    public static EntryKind Of(string word) => All.FirstOrDefault(k => k.Word == word) ?? All[0];

    /// <summary>Whether a tape may have been started at another graduation than its zero.</summary>
    public bool HasStart => Word is "plan" or "direct";

    /// <summary>Whether the value may be negative.</summary>
    public bool MayBeNegative => Word is "height" or "rise" or "offset";
}

/// <summary>Which points a reading asks for.</summary>
public enum EntryEnds
{
    /// <summary>One point.</summary>
    One,

    /// <summary>From one to another.</summary>
    Two,

    /// <summary>A point, and the two ends of a string.</summary>
    PointAndTwo,
}
