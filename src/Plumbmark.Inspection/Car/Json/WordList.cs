using System.Collections;
using System.Runtime.CompilerServices;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>
/// The words a file uses for the cases of an enumeration, in the order they are offered. There are half a hundred such lists and a short verb meets them all, so that a list
/// compares numbers: sorting and comparing the cases themselves would have the runtime compile the same code again for every enumeration.
/// </summary>
/// <typeparam name="T">The enumeration; its numbers are of the usual size.</typeparam>
public sealed class WordList<T> : IReadOnlyDictionary<string, T>
    where T : struct, Enum
{
    private readonly string[] _words;
    private readonly int[] _numbers;

    /// <summary>The words and what each means; every case of the enumeration has exactly one.</summary>
    public WordList(params (string Word, T Value)[] words)
    {
        _words = new string[words.Length];
        _numbers = new int[words.Length];
        for (var i = 0; i < words.Length; i++)
        {
            (_words[i], var value) = words[i];
            _numbers[i] = NumberOf(value);
        }

        var sorted = (int[])_numbers.Clone();
        Array.Sort(sorted);
#pragma warning disable CA2263 // The generic overload is compiled anew for each of forty enumerations, at start.
        if (Enum.GetValuesAsUnderlyingType(typeof(T)) is not int[] cases || !cases.AsSpan().SequenceEqual(sorted))
        {
            throw new ArgumentException($"Each case of {typeof(T).Name} needs exactly one word.", nameof(words));
        }
#pragma warning restore CA2263
    }

    /// <inheritdoc/>
    public IEnumerable<string> Keys => _words;

    /// <inheritdoc/>
    public IEnumerable<T> Values
    {
        get
        {
            foreach (var number in _numbers)
            {
                yield return CaseOf(number);
            }
        }
    }

    /// <inheritdoc/>
    public int Count => _words.Length;

    /// <inheritdoc/>
    public T this[string key] => TryGetValue(key, out var value) ? value : throw new KeyNotFoundException(key);

    /// <summary>The word for a case.</summary>
    public string WordFor(T value) => _words[Array.IndexOf(_numbers, NumberOf(value))];

    /// <inheritdoc/>
    public bool ContainsKey(string key) => TryGetValue(key, out _);

    /// <inheritdoc/>
    public bool TryGetValue(string key, out T value)
    {
        var index = Array.IndexOf(_words, key);
        value = index < 0 ? default : CaseOf(_numbers[index]);
        return index >= 0;
    }

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, T>> GetEnumerator()
    {
        for (var i = 0; i < _words.Length; i++)
        {
            yield return new(_words[i], CaseOf(_numbers[i]));
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    // The constructor has seen that the numbers are ints.
    private static int NumberOf(T value) => Unsafe.BitCast<T, int>(value);

    private static T CaseOf(int number) => Unsafe.BitCast<int, T>(number);
}
