using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The frame on paper: drawing, answer with reasons, pairs with verdicts, what is not known, readings, cautions.</summary>
/// <remarks>
/// Letters are never made smaller to fit: the drawing and its sentences take the room that the rest leaves. Where even that is too little, the readings
/// go to pages of their own, and with very many pairs their table does.
/// </remarks>
public static class FrameSheet
{
    // Picture units across a column of the page: more than on a phone, so that the letters come out smaller.
    internal const double PaperWidth = 390;

    /// <summary>The sheet as PDF.</summary>
    public static byte[] Pdf(CarFile car, FloorAnswer answer, SheetOptions options)
    {
        var document = Document(car, answer, options, 0);
        return (document.LacksLetters ? Document(car, answer, options, SheetDocument.LackedLettersRoom) : document).Pdf();
    }

    private static SheetDocument Document(CarFile car, FloorAnswer answer, SheetOptions options, double reserved) =>
        new(
            Texts.Say("sheet.frame.frame-sheet"),
            SheetWords.SubjectOf(car, options),
            options,
            [.. Blocks(car, answer, PageFrame.Of(options.Paper), reserved)]
        );

    private static IEnumerable<Block> Blocks(CarFile car, FloorAnswer answer, PageFrame page, double reserved)
    {
        const double Rounding = 1;
        var width = page.TextWidth;
        var verdict = new VerdictBlock(answer.Overall.Verdict, answer.Overall.Headline);
        IReadOnlyList<Block> tables = [.. FramePairs.Blocks(car, answer), .. FrameChecks.Blocks(car, answer)];
        IReadOnlyList<Block> unknown = [.. FrameLists.Full(answer)];
        IReadOnlyList<Block> readings = [.. FrameReadings.Blocks(car, answer)];
        IReadOnlyList<Block> cautions = [.. SheetWords.CautionBlocks(Cautions.Frame)];

        var room = page.TextHeight - HeadBlock.Tall - reserved - Rounding - HeightOf([verdict, .. unknown, .. cautions]);
        var withTables = room - HeightOf(tables);
        var withReadings = withTables - HeightOf(readings);
        return withReadings >= FrameFront.LeastRoom ? [verdict, .. Front(withReadings), .. tables, .. unknown, .. readings, .. cautions]
            : withTables >= FrameFront.LeastRoom ? [verdict, .. Front(withTables), .. tables, .. unknown, .. cautions, .. readings]
            : [verdict, .. Front(Math.Max(room, FrameFront.LeastRoom)), .. unknown, .. cautions, .. tables, .. readings];

        double HeightOf(IEnumerable<Block> blocks) => blocks.Sum(b => b.Height(width));
        IReadOnlyList<Block> Front(double left) => FrameFront.Blocks(car, answer, width, left);
    }
}
