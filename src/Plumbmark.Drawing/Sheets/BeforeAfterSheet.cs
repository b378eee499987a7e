using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Changes;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>One frame at two moments on one page: both drawings, what changed, and whether the change is more than measuring twice would give.</summary>
public static class BeforeAfterSheet
{
    /// <summary>The sheet as PDF.</summary>
    /// <param name="before">The car as it was.</param>
    /// <param name="answerBefore">What its readings said.</param>
    /// <param name="after">The car as it is.</param>
    /// <param name="answerAfter">What its readings say.</param>
    /// <param name="options">Paper, date, version.</param>
    public static byte[] Pdf(CarFile before, FloorAnswer answerBefore, CarFile after, FloorAnswer answerAfter, SheetOptions options)
    {
        double[] heights = [380, 320, 270, 220];
        var changes = FrameComparison.Of(answerBefore, answerAfter);
        var documents = heights.Select(h => Document(before, answerBefore, after, answerAfter, changes, options, h));
        return (documents.FirstOrDefault(d => d.PageCount == 1) ?? documents.First()).Pdf();
    }

    private static SheetDocument Document(
        CarFile before,
        FloorAnswer answerBefore,
        CarFile after,
        FloorAnswer answerAfter,
        IReadOnlyList<FrameChange> changes,
        SheetOptions options,
        double frameHeight
    )
    {
        var range = Math.Max(Largest(answerBefore), Largest(answerAfter));
        List<Block> blocks =
        [
            new ColumnsBlock(
                [.. Side(Texts.Say("sheet.before-after.before"), before, answerBefore, frameHeight, range)],
                [.. Side(Texts.Say("sheet.before-after.after"), after, answerAfter, frameHeight, range)],
                0.5
            ),
            .. Changes(ShownLengths.Of(after), SheetWords.Unit(after), changes),
            .. SheetWords.CautionBlocks(Cautions.BeforeAfter),
        ];
        return new SheetDocument(Texts.Say("sheet.before-after.before-and-after"), SheetWords.SubjectOf(after, options), options, blocks);
    }

    private static IEnumerable<Block> Side(string word, CarFile car, FloorAnswer answer, double frameHeight, double rangeMetres)
    {
        yield return new SpaceBlock(4);
        yield return TextBlock.Heading($"{word}: {VerdictWord.Said(answer.Overall.Verdict)}");
        yield return new TextBlock(
            Texts.Say("sheet.before-after.readings", answer.Overall.Headline, car.StandingReadings.Count()),
            PageType.Small
        );
        var quiet = answer with { Next = [], Suspects = [] };
        yield return new PictureBlock(
            FloorPlanDrawing.Of(
                car with
                {
                    Readings = [],
                },
                quiet,
                new FloorDrawingOptions(Width: FrameSheet.PaperWidth, TallestFrame: frameHeight, LeastRangeMetres: rangeMetres)
            ),
            frameHeight + 40
        );
    }

    private static IEnumerable<Block> Changes(LengthDisplay display, string unit, IReadOnlyList<FrameChange> changes)
    {
        if (changes.Count == 0)
        {
            yield return TextBlock.Heading(Texts.Say("sheet.before-after.nothing-to-compare"));
            yield return new TextBlock(Texts.Say("sheet.before-after.the-two-moments-have-no"), PageType.Body);
            yield break;
        }

        var real = changes.Where(c => c.Finding == ChangeFinding.Real).ToList();
        yield return TextBlock.Heading(Texts.Say("sheet.before-after.what-changed", unit));
        yield return new TextBlock(Summary(changes.Count, real.Count), PageType.Body, staysWithNext: real.Count > 0);
        if (real.Count > 0)
        {
            TableColumn[] columns =
            [
                new(Texts.Say("sheet.before-after.what"), 1.9),
                new(Texts.Say("sheet.before-after.points-2"), 1.3),
                new(Texts.Say("sheet.before-after.before"), 1.4),
                new(Texts.Say("sheet.before-after.after"), 1.4),
                new(Texts.Say("sheet.before-after.change"), 0.8, IsRight: true),
                new(Texts.Say("sheet.before-after.sure-to"), 0.8, IsRight: true),
            ];
            yield return new TableBlock(columns, [.. real.Select(c => Row(display, c))]);
        }

        var rest = changes.Where(c => c.Finding != ChangeFinding.Real).ToList();
        if (rest.Count > 0)
        {
            yield return TextBlock.Heading(Texts.Say("sheet.before-after.what-could-be-noise", unit));
            yield return Rest(display, rest);
        }
    }

    /// <summary>Two of them on a line, down the first half and then down the second.</summary>
    private static TableBlock Rest(LengthDisplay display, IReadOnlyList<FrameChange> rest)
    {
        TableColumn[] half =
        [
            new(Texts.Say("sheet.before-after.what"), 2),
            new(Texts.Say("sheet.before-after.points-2"), 1.1),
            new(Texts.Say("sheet.before-after.before"), 0.8, IsRight: true),
            new(Texts.Say("sheet.before-after.after"), 0.8, IsRight: true),
            new(Texts.Say("sheet.before-after.sure-to"), 0.8, IsRight: true),
        ];
        var rowCount = (rest.Count + 1) / 2;
        var rows = Enumerable.Range(0, rowCount).Select(r => (IReadOnlyList<TableCell>)[.. Cells(r), .. Cells(r + rowCount)]);
        return new TableBlock([.. half, .. half], [.. rows], padding: 0.5);

        IEnumerable<TableCell> Cells(int index)
        {
            if (index >= rest.Count)
            {
                return half.Select(_ => TableCell.Empty);
            }

            var change = rest[index];
            string[] texts =
            [
                CheckWords.For(change.Kind),
                Points(change),
                display.Number(change.BeforeMetres),
                display.Number(change.AfterMetres),
                SheetWords.PlusMinus(display, ShownLengths.Coverage * change.UMetres),
            ];
            return texts.Select(t => new TableCell(t, PageType.CellSmall));
        }
    }

    private static string Points(FrameChange change) =>
        change.Points.Count <= 3 ? string.Join(", ", change.Points) : Texts.Say("sheet.before-after.points", change.Points.Count);

    private static double Largest(FloorAnswer answer) =>
        answer
            .Points.Select(p => p.Deviation)
            .OfType<Deviation>()
            .Select(d => Math.Sqrt(((d.DxMetres ?? 0) * (d.DxMetres ?? 0)) + ((d.DyMetres ?? 0) * (d.DyMetres ?? 0))))
            .DefaultIfEmpty(0)
            .Max();

    private static string Summary(int all, int real) =>
        (
            real switch
            {
                0 => Texts.Say("sheet.before-after.of-values-compared-none-changed", all),
                1 => Texts.Say("sheet.before-after.of-values-compared-one-really", all),
                _ => Texts.Say("sheet.before-after.of-values-compared-really-changed", all, real),
            }
        ) + Texts.Say("sheet.before-after.the-number-of-values-compared");

    private static IReadOnlyList<TableCell> Row(LengthDisplay display, FrameChange change) =>
        [
            new TableCell(CheckWords.For(change.Kind)),
            new TableCell(Points(change)),
            Value(display, change.BeforeMetres, change.VerdictBefore),
            Value(display, change.AfterMetres, change.VerdictAfter),
            new TableCell(display.Number(change.ChangeMetres), PageType.CellStrong),
            new TableCell(SheetWords.PlusMinus(display, ShownLengths.Coverage * change.UMetres)),
        ];

    private static TableCell Value(LengthDisplay display, double metres, Verdict? verdict) =>
        verdict is null
            ? new TableCell(display.Number(metres))
            : new TableCell([(display.Number(metres), PageType.Cell), (SheetWords.For(verdict), SheetWords.LetteringFor(verdict))]);
}
