namespace Plumbmark.Web.Bench;

/// <summary>One field of the form for a measure.</summary>
/// <param name="Name">Its name in the form.</param>
/// <param name="Label">Its label.</param>
/// <param name="Hint">A short line under it; null when none.</param>
/// <param name="Choices">What may be chosen; null for a line of text.</param>
/// <param name="IsDimension">Whether known dimensions are offered for it.</param>
/// <param name="Group">Heading of the row it stands in; fields of one group stand side by side.</param>
public sealed record MeasureField(
    string Name,
    string Label,
    string? Hint = null,
    IReadOnlyList<(string Value, string Text)>? Choices = null,
    bool IsDimension = false,
    string Group = ""
);
