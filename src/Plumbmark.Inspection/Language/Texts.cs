using System.Globalization;

namespace Plumbmark.Inspection.Language;

/// <summary>Every sentence that people read, from one file for a language: <c>Language/en-GB.json</c>. Not what a person typed, and no word of a file's format.</summary>
/// <remarks>
/// Another language is one more file beside it, built in; what it lacks is said in English. <c>pseudo</c> is English with marks round every sentence, so that
/// a test can see what does not come from the file. The executable chooses the language once, with <see cref="Speak"/>, before the first sentence.
/// </remarks>
public static class Texts
{
    private static Tongue? s_spoken;

    /// <summary>The language as HTML names it.</summary>
    public static string Language => Spoken.Name;

    /// <summary>Every key there is.</summary>
    public static IEnumerable<string> Keys => Spoken.Sentences.Keys;

    private static Tongue Spoken => s_spoken ??= Tongue.English();

    /// <summary>Chooses the language for the whole run. A language that is not built in, or none, is English.</summary>
    /// <param name="language">Such as <c>en-GB</c>, or <c>pseudo</c>.</param>
    /// <exception cref="InvalidOperationException">Something has been said already, so that two languages would stand beside each other.</exception>
    public static void Speak(string? language)
    {
        if (s_spoken is { } spoken && spoken.AskedFor != language)
        {
            throw new InvalidOperationException("The language is chosen before the first sentence, and once.");
        }

        s_spoken ??= Tongue.Of(language);
    }

    /// <summary>The sentence of that key.</summary>
    /// <exception cref="KeyNotFoundException">No such key: a fault of ours, which a test finds.</exception>
    public static string Say(string key) => Spoken.Sentences[key];

    /// <summary>The sentence of that key with its parts put in at {0}, {1} and so on; numbers as every culture writes them.</summary>
    /// <exception cref="KeyNotFoundException">No such key: a fault of ours, which a test finds.</exception>
    public static string Say(string key, params ReadOnlySpan<object?> parts) =>
        string.Format(CultureInfo.InvariantCulture, Spoken.Sentences[key], parts);

    /// <summary>So many of something: the sentence <c>key.one</c> or <c>key.many</c>, with the number at {0} and the parts from {1} on.</summary>
    /// <exception cref="KeyNotFoundException">No such key: a fault of ours, which a test finds.</exception>
    public static string Count(string key, int count, params ReadOnlySpan<object?> parts) =>
        Say(count == 1 ? $"{key}.one" : $"{key}.many", [count, .. parts]);

    /// <summary>Words side by side, such as "B.L, C.L, D.L".</summary>
    public static string List(IEnumerable<string> words) => string.Join(Say("list.between"), words);

    /// <summary>A number in a sentence, written the same in every language.</summary>
    /// <param name="number">The number, in the unit that the sentence names; none is written as nothing.</param>
    /// <param name="format">Such as <c>0.0</c>.</param>
    public static string Number(IFormattable? number, string format) => number?.ToString(format, CultureInfo.InvariantCulture) ?? "";
}
