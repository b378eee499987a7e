using static Plumbmark.Inspection.Language.Texts;

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
        new("plan", Say("kind.plan"), EntryEnds.Two, Say("kind.plan.hint")),
        new("direct", Say("kind.direct"), EntryEnds.Two, Say("kind.direct.hint")),
        new("height", Say("kind.height"), EntryEnds.One, Say("kind.height.hint")),
        new("rise", Say("kind.rise"), EntryEnds.Two, Say("kind.rise.hint")),
        new("offset", Say("kind.offset"), EntryEnds.PointAndTwo, Say("kind.offset.hint")),
        new("drop", Say("kind.drop"), EntryEnds.One, Say("kind.drop.hint")),
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
