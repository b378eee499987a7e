using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>Words that sheets share.</summary>
internal static class SheetWords
{
    public static string SubjectOf(CarFile car, SheetOptions options)
    {
        var name = car.Car.Name.Trim() is { Length: > 0 } given ? given : Texts.Say("sheet.a-car-without-a-name");
        return options.ShowsSerial && car.Car.Serial is { } serial ? Texts.Say("sheet.serial", name, serial) : name;
    }

    public static string Unit(CarFile car) => car.Units == LengthUnit.Inch ? "in" : "mm";

    public static string For(Verdict? verdict) => verdict is { } known ? VerdictWord.Said(known) : Texts.Say("sheet.no-limit-known");

    public static Lettering LetteringFor(Verdict? verdict) =>
        verdict switch
        {
            Verdict.True => PageType.True,
            Verdict.Out => PageType.Out,
            Verdict.CannotTellYet => PageType.CannotTell,
            _ => PageType.Small,
        };

    public static string For(LimitSource source) =>
        source switch
        {
            LimitSource.Factory => "factory",
            LimitSource.Practice => "practice",
            LimitSource.Own => "own",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>How sure, or how far either way, in a column whose head has the unit: ±1/16.</summary>
    public static string PlusMinus(LengthDisplay display, double metres)
    {
        var text = display.PlusMinus(metres);
        return text[..text.LastIndexOf(' ')];
    }

    public static IEnumerable<Block> CautionBlocks(IEnumerable<string> cautions)
    {
        var blocks = cautions.Select(c => new TextBlock(c, PageType.Fine, "•", below: 0.5)).ToList();
        var half = (blocks.Count + 1) / 2;
        yield return TextBlock.CloseHeading(Texts.Say("sheet.before-you-rely-on-this"));
        yield return new ColumnsBlock([.. blocks.Take(half)], [.. blocks.Skip(half)], 0.5);
        yield return new SpaceBlock(1);
    }
}
