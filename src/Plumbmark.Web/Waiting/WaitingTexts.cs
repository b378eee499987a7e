using System.Text.Json;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Waiting;

/// <summary>What <c>waiting.js</c> says. A page hands it over as data, because nothing may stand in a page as script.</summary>
public static class WaitingTexts
{
    /// <summary>The keys that the script asks for.</summary>
    public static IReadOnlyList<string> Keys { get; } =
    [
        "waiting.shut",
        "waiting.trouble",
        "waiting.away",
        "waiting.waits.one",
        "waiting.waits.many",
        "waiting.waits-shut.one",
        "waiting.waits-shut.many",
        "waiting.waits-away.one",
        "waiting.waits-away.many",
        "waiting.unsent",
        "waiting.go-on",
        "waiting.back.one",
        "waiting.back.many",
        "waiting.back-else.one",
        "waiting.back-else.many",
        "waiting.refused.one",
        "waiting.refused.many",
        "waiting.not-taken",
        "waiting.send-again",
        "waiting.throw-away",
        "waiting.about",
        "waiting.confirm",
        "waiting.ends",
        "waiting.empty-form",
        "waiting.no-page",
    ];

    /// <summary>The sentences by their keys, as JSON.</summary>
    public static string Json { get; } = JsonSerializer.Serialize(Keys.ToDictionary(k => k, k => Say(k), StringComparer.Ordinal));
}
