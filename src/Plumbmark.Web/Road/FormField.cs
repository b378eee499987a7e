namespace Plumbmark.Web.Road;

/// <summary>One field of a form of the Road: what it is called in the file, what it is called on the page, and what may stand in it.</summary>
/// <param name="Name">Its name in the form; in the file too, with its group before a point: <c>trunnion.offset</c>.</param>
/// <param name="Label">What the person reads.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Hint">A short line under it; null for none.</param>
/// <param name="IsRequired">Whether it may not stay empty.</param>
/// <param name="Choices">For a choice: what may be chosen.</param>
/// <param name="Heading">A heading above it, where a new part of the form begins; null for none.</param>
public sealed record FormField(
    string Name,
    string Label,
    FormField.Holds Kind = FormField.Holds.Measure,
    string? Hint = null,
    bool IsRequired = false,
    IReadOnlyList<(string Value, string Text)>? Choices = null,
    string? Heading = null
)
{
    /// <summary>What a field holds.</summary>
    public enum Holds
    {
        /// <summary>A length or an angle, as typed.</summary>
        Measure,

        /// <summary>A text.</summary>
        Written,

        /// <summary>A place: three lengths with commas between.</summary>
        ThreeLengths,

        /// <summary>A pair's name, or a place.</summary>
        PairOrPlace,

        /// <summary>One of some words.</summary>
        Choice,

        /// <summary>Yes or no.</summary>
        Truth,

        /// <summary>Several of some words, ticked.</summary>
        Several,
    }
}
