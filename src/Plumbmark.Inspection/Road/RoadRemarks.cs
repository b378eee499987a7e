namespace Plumbmark.Inspection.Road;

/// <summary>What the Road could not know, in sentences for a person: what is missing, and what was assumed instead of measured.</summary>
internal sealed class RoadRemarks
{
    private readonly List<string> _missing = [];
    private readonly List<string> _assumed = [];

    /// <summary>What is missing for a full answer.</summary>
    public IReadOnlyList<string> Missing => _missing;

    /// <summary>What was assumed.</summary>
    public IReadOnlyList<string> Assumed => _assumed;

    /// <summary>Notes something missing, once.</summary>
    public void Miss(string sentence) => AddOnce(_missing, sentence);

    /// <summary>Notes something assumed, once.</summary>
    public void Assume(string sentence) => AddOnce(_assumed, sentence);

    private static void AddOnce(List<string> sentences, string sentence)
    {
        if (!sentences.Contains(sentence))
        {
            sentences.Add(sentence);
        }
    }
}
