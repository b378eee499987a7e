using System.Collections;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>The words a file uses for the cases of an enumeration, in the order they are offered.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
public sealed class WordList<T> : IReadOnlyDictionary<string, T>
    where T : struct, Enum
{
    private readonly (string Word, T Value)[] _words;

    /// <summary>The words and what each means; every case of the enumeration has exactly one.</summary>
    public WordList(params (string Word, T Value)[] words)
    {
        _words = words;
        if (!Enum.GetValues<T>().Order().SequenceEqual(words.Select(w => w.Value).Order()))
        {
            throw new ArgumentException($"Each case of {typeof(T).Name} needs exactly one word.", nameof(words));
        }
    }

    /// <inheritdoc/>
    public IEnumerable<string> Keys => _words.Select(w => w.Word);

    /// <inheritdoc/>
    public IEnumerable<T> Values => _words.Select(w => w.Value);

    /// <inheritdoc/>
    public int Count => _words.Length;

    /// <inheritdoc/>
    public T this[string key] => TryGetValue(key, out var value) ? value : throw new KeyNotFoundException(key);

    /// <summary>The word for a case.</summary>
    public string WordFor(T value) => _words.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word;

    /// <inheritdoc/>
    public bool ContainsKey(string key) => TryGetValue(key, out _);

    /// <inheritdoc/>
    public bool TryGetValue(string key, out T value)
    {
        var index = Array.FindIndex(_words, w => w.Word == key);
        value = index < 0 ? default : _words[index].Value;
        return index >= 0;
    }

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() => _words.Select(w => KeyValuePair.Create(w.Word, w.Value)).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
