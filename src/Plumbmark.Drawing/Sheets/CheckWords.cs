using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The kinds of checks in trade words.</summary>
internal static class CheckWords
{
    public static string For(string kind) =>
        kind switch
        {
            "sideShift" => Texts.Say("sheet.check.middle-off-the-centre-line"),
            "stagger" => Texts.Say("sheet.check.left-ahead-of-right"),
            "width" => "width",
            "heightDifference" => Texts.Say("sheet.check.left-higher-than-right"),
            "deviation" => Texts.Say("sheet.check.against-the-book"),
            "pair" => Texts.Say("sheet.check.one-of-the-pair-at"),
            _ => kind,
        };
}
