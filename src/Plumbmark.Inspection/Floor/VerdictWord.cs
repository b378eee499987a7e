namespace Plumbmark.Inspection.Floor;

/// <summary>The words of a verdict: the same on the page, on the sheet and in JSON.</summary>
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
}
