using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Plumbmark.Web.Layout;

/// <summary>The sentences of the pages, from one file for a language: <c>Texts/en-GB.json</c>. Not what a person typed, and not what Inspection says of a measurement.</summary>
/// <remarks>
/// Another language is one more file beside it, chosen with <see cref="LanguageVariable"/>; what it lacks is said in English. <c>pseudo</c> is English with
/// marks round every sentence, so that a test can see what does not come from the file.
/// </remarks>
public static class Texts
{
    /// <summary>The variable of the environment that names the language, such as <c>en-GB</c>.</summary>
    public const string LanguageVariable = "PLUMBMARK_LANGUAGE";

    private const string Own = "en-GB";
    private const string Pseudo = "pseudo";
    private static readonly string s_language = Chosen();
    private static readonly FrozenDictionary<string, string> s_sentences = Load();

    /// <summary>The language as HTML names it.</summary>
    public static string Language => s_language == Pseudo ? Own : s_language;

    /// <summary>Every key there is.</summary>
    public static IEnumerable<string> Keys => s_sentences.Keys;

    /// <summary>The sentence of that key.</summary>
    /// <exception cref="KeyNotFoundException">No such key: a fault of ours, which a test finds.</exception>
    public static string Say(string key) => s_sentences[key];

    /// <summary>The sentence of that key with its parts put in at {0}, {1} and so on.</summary>
    /// <exception cref="KeyNotFoundException">No such key: a fault of ours, which a test finds.</exception>
    public static string Say(string key, params ReadOnlySpan<object?> parts) =>
        string.Format(CultureInfo.InvariantCulture, s_sentences[key], parts);

    private static string Chosen()
    {
        var asked = Environment.GetEnvironmentVariable(LanguageVariable) ?? Own;
        return asked == Pseudo || Find(asked) is not null ? asked : Own;
    }

    private static FrozenDictionary<string, string> Load()
    {
        var sentences = Read(Own);
        if (s_language == Pseudo)
        {
            return sentences.ToFrozenDictionary(s => s.Key, s => $"⟦{Accented(s.Value)}⟧", StringComparer.Ordinal);
        }

        foreach (var (key, sentence) in s_language == Own ? [] : Read(s_language))
        {
            sentences[key] = sentence;
        }

        return sentences.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private static string? Find(string language) =>
        Array.Find(typeof(Texts).Assembly.GetManifestResourceNames(), n => n == $"Texts/{language}.json");

    private static Dictionary<string, string> Read(string language)
    {
        using var stream = typeof(Texts).Assembly.GetManifestResourceStream(Find(language)!)!;
        return JsonSerializer.Deserialize<Dictionary<string, string>>(stream)!;
    }

    /// <summary>Vowels with an accent, outside the places for parts: readable, and plainly not the original.</summary>
    private static string Accented(string sentence)
    {
        const string Plain = "aeiouAEIOU";
        const string Marked = "åéîøüÅÉÎØÜ";
        var text = new StringBuilder(sentence.Length);
        foreach (var c in sentence)
        {
            text.Append(Plain.IndexOf(c, StringComparison.Ordinal) is >= 0 and var i ? Marked[i] : c);
        }

        return text.ToString();
    }
}
