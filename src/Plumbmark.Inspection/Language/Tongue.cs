using System.Text;
using System.Text.Json;

namespace Plumbmark.Inspection.Language;

/// <summary>A language with all its sentences, read once from the file built in.</summary>
/// <param name="AskedFor">What was asked for, which need not be there.</param>
/// <param name="Name">The language as HTML names it.</param>
/// <param name="Sentences">The sentence of each key.</param>
internal sealed record Tongue(string? AskedFor, string Name, Dictionary<string, string> Sentences)
{
    private const string Own = "en-GB";
    private const string Pseudo = "pseudo";
    private const int Expected = 4000; // sentences, so that the table need not grow while it is read

    /// <summary>The language that every other is built on.</summary>
    public static Tongue English() => Of(null);

    /// <summary>That language, with English for what it lacks.</summary>
    public static Tongue Of(string? language)
    {
        var sentences = new Dictionary<string, string>(Expected);
        Read(Own, sentences);
        if (language == Pseudo)
        {
            return new Tongue(language, Own, sentences.ToDictionary(s => s.Key, s => Marked(s.Value)));
        }

        return language is not null && language != Own && Read(language, sentences)
            ? new Tongue(language, language, sentences)
            : new Tongue(language, Own, sentences);
    }

    /// <summary>Reads the file of a language over what is there. Says whether there is one.</summary>
    /// <remarks>By the tokens: what turns JSON into objects by reflection takes longer to start than everything a short verb works out.</remarks>
    private static bool Read(string language, Dictionary<string, string> into)
    {
        using var stream = typeof(Tongue).Assembly.GetManifestResourceStream($"Language/{language}.json");
        if (stream is null)
        {
            return false;
        }

        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        var json = new Utf8JsonReader(bytes);
        var key = "";
        while (json.Read())
        {
            if (json.TokenType == JsonTokenType.PropertyName)
            {
                key = json.GetString()!;
            }
            else if (json.TokenType == JsonTokenType.String)
            {
                into[key] = json.GetString()!;
            }
        }

        return true;
    }

    /// <summary>Marks round the sentence, and vowels with an accent outside the places for parts: readable, and plainly not the original.</summary>
    private static string Marked(string sentence)
    {
        const string Plain = "aeiouAEIOU";
        const string Accented = "åéîøüÅÉÎØÜ";
        var text = new StringBuilder("⟦", sentence.Length + 2);
        foreach (var c in sentence)
        {
            text.Append(Plain.IndexOf(c, StringComparison.Ordinal) is >= 0 and var i ? Accented[i] : c);
        }

        return text.Append('⟧').ToString();
    }
}
