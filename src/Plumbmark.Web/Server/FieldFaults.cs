namespace Plumbmark.Web.Server;

/// <summary>What is wrong in a form, a sentence for each field. Empty when nothing is.</summary>
public sealed class FieldFaults
{
    private readonly Dictionary<string, string> _sentences = new(StringComparer.Ordinal);

    /// <summary>Whether anything is wrong.</summary>
    public bool Any => _sentences.Count > 0;

    /// <summary>The sentence for a field; null when it is right.</summary>
    public string? this[string field] => _sentences.GetValueOrDefault(field);

    /// <summary>Every field that is wrong, with its sentence.</summary>
    public IReadOnlyCollection<KeyValuePair<string, string>> All => _sentences;

    /// <summary>Records what is wrong with a field; the first sentence stays.</summary>
    public void Add(string field, string sentence) => _sentences.TryAdd(field, sentence);
}
