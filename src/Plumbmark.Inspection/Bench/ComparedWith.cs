namespace Plumbmark.Inspection.Bench;

/// <summary>What a dimension was held against.</summary>
public enum ComparedWith
{
    /// <summary>The book's figure for a variant.</summary>
    Book,

    /// <summary>The part of the other side.</summary>
    Mirror,

    /// <summary>Nothing else: it should be nothing, or stay within a limit by itself.</summary>
    Itself,
}
