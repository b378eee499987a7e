using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>The words of what to do with a part, in English as JSON and tables have them, and in the language spoken as sheets and texts say them.</summary>
public static class DispositionWord
{
    /// <summary>keep, straighten, replace, or measure again.</summary>
    public static string For(Disposition disposition) =>
        disposition switch
        {
            Disposition.Keep => "keep",
            Disposition.Straighten => "straighten",
            Disposition.Replace => "replace",
            _ => "measure again",
        };

    /// <summary>The same for people, in the language spoken.</summary>
    public static string Said(Disposition disposition) =>
        disposition switch
        {
            Disposition.Keep => Texts.Say("disposition.keep"),
            Disposition.Straighten => Texts.Say("disposition.straighten"),
            Disposition.Replace => Texts.Say("disposition.replace"),
            _ => Texts.Say("disposition.measure-again"),
        };
}
