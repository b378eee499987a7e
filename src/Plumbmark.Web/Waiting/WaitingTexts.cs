using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Waiting;

/// <summary>What <c>saying.js</c> and <c>waiting.js</c> say. A page hands it over as data, because nothing may stand in a page as script.</summary>
public static class WaitingTexts
{
    /// <summary>The keys that the scripts ask for.</summary>
    public static IReadOnlyList<string> Keys { get; } =
    [
        "waiting.and",
        "waiting.reading.one",
        "waiting.reading.many",
        "waiting.photo.one",
        "waiting.photo.many",
        "waiting.measure.one",
        "waiting.measure.many",
        "waiting.bite.one",
        "waiting.bite.many",
        "waiting.test.one",
        "waiting.test.many",
        "waiting.shut",
        "waiting.trouble",
        "waiting.away",
        "waiting.full",
        "waiting.waits.one",
        "waiting.waits.many",
        "waiting.waits-shut.one",
        "waiting.waits-shut.many",
        "waiting.waits-away.one",
        "waiting.waits-away.many",
        "waiting.unsent",
        "waiting.go-on",
        "waiting.back",
        "waiting.back-else",
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

    /// <summary>The sentences, each as <c>shut=This phone…</c>, with strokes between. Every page carries it: JSON, with its quotes written out, is half as long again.</summary>
    public static string Lines { get; } =
        string.Join('|', Keys.Select(k => $"{k[(k.IndexOf('.', StringComparison.Ordinal) + 1)..]}={Say(k)}"));
}
