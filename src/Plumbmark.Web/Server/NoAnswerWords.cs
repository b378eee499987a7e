using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Server;

/// <summary>What a page says where an answer could not be worked out.</summary>
internal static class NoAnswerWords
{
    /// <summary>In one sentence.</summary>
    public static string Headline => Say("answer.failed");

    /// <summary>What that means for what was entered, how to go on, and what may be reported.</summary>
    public static IReadOnlyList<string> Why => [Say("answer.failed.kept"), Say("answer.failed.go-on"), Say("answer.failed.report")];
}
