using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Waiting;

/// <summary>The sentences that <c>saying.js</c> needs while the laptop cannot be reached: every page brings them along.</summary>
public static class WaitingWords
{
    private const string Prefix = "waiting.";

    /// <summary>A line for each key below <c>waiting.</c>: the key, an equals sign, what it says. Quotation marks, as JSON has them, would weigh a kilobyte more.</summary>
    public static string Lines { get; } =
        string.Join(
            '\n',
            Keys.Where(k => k.StartsWith(Prefix, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(k => $"{k[Prefix.Length..]}={Say(k)}")
        );
}
