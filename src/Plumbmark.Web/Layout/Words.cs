using Plumbmark.Inspection.Floor;

namespace Plumbmark.Web.Layout;

/// <summary>The words of verdicts.</summary>
public static class Words
{
    /// <summary>true, out, can't tell yet; "no limit known" where there is no verdict.</summary>
    public static string For(Verdict? verdict) =>
        verdict switch
        {
            Verdict.True => "true",
            Verdict.Out => "out",
            Verdict.CannotTellYet => "can't tell yet",
            _ => "no limit known",
        };
}
