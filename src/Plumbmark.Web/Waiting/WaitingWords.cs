using System.Text.Json;
using Plumbmark.Web.Layout;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Waiting;

/// <summary>The sentences that <c>saying.js</c> needs while the laptop cannot be reached: every page brings them along.</summary>
public static class WaitingWords
{
    private const string Prefix = "waiting.";

    /// <summary>An object of JSON: the keys below <c>waiting.</c>, and what they say.</summary>
    public static string Json { get; } =
        JsonSerializer.Serialize(
            Keys.Where(k => k.StartsWith(Prefix, StringComparison.Ordinal))
                .Select(k => k[Prefix.Length..])
                .Order(StringComparer.Ordinal)
                .ToDictionary(key => key, key => Say($"waiting.{key}"))
        );
}
