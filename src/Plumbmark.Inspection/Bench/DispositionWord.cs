using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>The words of what to do with a part: the same on the page, on the sheet and in JSON, but for the language of the reader.</summary>
public static class DispositionWord
{
    /// <summary>keep, straighten, replace, or measure again: the words of the file formats, the same in every language.</summary>
    public static string For(Disposition disposition) =>
        disposition switch
        {
            Disposition.Keep => "keep",
            Disposition.Straighten => "straighten",
            Disposition.Replace => "replace",
            _ => "measure again",
        };

    /// <summary>The same for a reader, in the language spoken.</summary>
    public static string Said(Disposition disposition) =>
        disposition switch
        {
            Disposition.Keep => Texts.Say("bench.disposition-word.keep"),
            Disposition.Straighten => Texts.Say("bench.disposition-word.straighten"),
            Disposition.Replace => Texts.Say("bench.disposition-word.replace"),
            _ => Texts.Say("bench.disposition-word.measure-again"),
        };
}
