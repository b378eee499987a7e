using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>The words of what to do with a part: the same on the page, on the sheet and in JSON.</summary>
public static class DispositionWord
{
    /// <summary>keep, straighten, replace, or measure again.</summary>
    public static string For(Disposition disposition) =>
        disposition switch
        {
            Disposition.Keep => "keep",
            Disposition.Straighten => "straighten",
            Disposition.Replace => "replace",
            _ => Texts.Say("bench.disposition-word.measure-again"),
        };
}
