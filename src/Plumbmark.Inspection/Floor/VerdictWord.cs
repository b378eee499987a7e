using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>The words of a verdict, in English as JSON and tables have them, and in the language spoken as pages, sheets and texts say them.</summary>
public static class VerdictWord
{
    /// <summary>true, out, or can't tell yet.</summary>
    public static string For(Verdict verdict) =>
        verdict switch
        {
            Verdict.True => "true",
            Verdict.Out => "out",
            _ => "can't tell yet",
        };

    /// <summary>The same for people, in the language spoken.</summary>
    public static string Said(Verdict verdict) =>
        verdict switch
        {
            Verdict.True => Texts.Say("verdict.true"),
            Verdict.Out => Texts.Say("verdict.out"),
            _ => Texts.Say("verdict.cannot-tell"),
        };
}
