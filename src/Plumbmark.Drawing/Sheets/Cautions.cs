using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>What every sheet says about what it is not, and about working safely. The trade's usual cautions, in our words (common practice, no source).</summary>
internal static class Cautions
{
    /// <summary>The line at the foot of every page.</summary>
    public static string Foot => Texts.Say("sheet.cautions.compares-measurements-not-a-certificate");

    /// <summary>For a sheet about a frame.</summary>
    public static IReadOnlyList<string> Frame { get; } =
    [
        Texts.Say("sheet.cautions.this-sheet-compares-measurements-whether"),
        Texts.Say("sheet.cautions.dimensions-show-shape-they-cannot"),
        Texts.Say("sheet.cautions.a-limit-marked-practice-or"),
        Texts.Say("sheet.cautions.stands-must-be-rated-for"),
        Texts.Say("sheet.cautions.a-bent-steering-part-upright"),
    ];

    /// <summary>For a sheet that a frame shop works by.</summary>
    public static IReadOnlyList<string> Workshop { get; } =
    [
        Texts.Say("sheet.cautions.these-are-wishes-from-measurements"),
        Texts.Say("sheet.cautions.before-pulling-look-for-cracks"),
        Texts.Say("sheet.cautions.measure-again-after-each-pull"),
        Texts.Say("sheet.cautions.bent-steering-parts-uprights-and"),
    ];

    /// <summary>For a sheet that shows two moments.</summary>
    public static IReadOnlyList<string> BeforeAfter { get; } =
    [
        Texts.Say("sheet.cautions.this-sheet-compares-measurements-at"),
        Texts.Say("sheet.cautions.both-moments-should-be-measured"),
        Texts.Say("sheet.cautions.a-change-that-could-be"),
        Texts.Say("sheet.cautions.repairs-to-a-frame-may"),
    ];

    /// <summary>For a form that is filled in beside the frame.</summary>
    public static IReadOnlyList<string> Form { get; } =
    [
        Texts.Say("sheet.cautions.stands-rated-for-the-load"),
        Texts.Say("sheet.cautions.two-people-lift-a-bare"),
        Texts.Say("sheet.cautions.level-the-frame-on-three"),
    ];

    /// <summary>For a sheet about loose parts.</summary>
    public static IReadOnlyList<string> Parts { get; } =
    [Texts.Say("sheet.cautions.no-dimension-shows-a-crack"), Texts.Say("sheet.cautions.steering-levers-uprights-and-stub")];
}
