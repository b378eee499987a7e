using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Workshop;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>For a frame shop: only what to move, which way, how much, and what to measure while moving it. Reasons and readings are on the frame sheet.</summary>
public static class WorkshopSheet
{
    /// <summary>The sheet as PDF.</summary>
    public static byte[] Pdf(CarFile car, FloorAnswer answer, SheetOptions options) =>
        new SheetDocument(
            Texts.Say("sheet.workshop.workshop-sheet"),
            SheetWords.SubjectOf(car, options),
            options,
            [.. Blocks(car, answer)]
        ).Pdf();

    private static IEnumerable<Block> Blocks(CarFile car, FloorAnswer answer)
    {
        var moves = WorkshopMoves.Of(car, answer);
        var whole = WholeFrame(answer).ToList();
        var plan = FloorPlanDrawing.Of(Quiet(car), Quiet(answer), new FloorDrawingOptions(Width: FrameSheet.PaperWidth, TallestFrame: 400));
        yield return new SpaceBlock(6);
        yield return new ColumnsBlock([new PictureBlock(plan, 400)], [.. Summary(answer, moves, whole)], 0.5);
        if (moves.Count > 0)
        {
            yield return TextBlock.Heading(Texts.Say("sheet.workshop.what-to-move-which-way"));
            yield return MoveTable(car, moves);
        }

        foreach (var block in SheetWords.CautionBlocks(Cautions.Workshop))
        {
            yield return block;
        }
    }

    // A shop has no use for what has been taped, doubted or is to be taped next.
    private static CarFile Quiet(CarFile car) => car with { Readings = [] };

    private static FloorAnswer Quiet(FloorAnswer answer) => answer with { Suspects = [], Next = [] };

    private static IEnumerable<string> WholeFrame(FloorAnswer answer) =>
        answer
            .Checks.Where(c => c is { Verdict: Verdict.Out, Points.Count: 0 or > 2 })
            .Select(c =>
                answer.Damage.FirstOrDefault(d => d.Form == c.Kind)?.Sentence
                ?? Texts.Say("sheet.workshop.the-frame-has", CheckWords.For(c.Kind))
            )
            .Distinct(StringComparer.Ordinal);

    private static IEnumerable<Block> Summary(FloorAnswer answer, IReadOnlyList<WorkshopMove> moves, IReadOnlyList<string> whole)
    {
        if (answer.Suspects.Count > 0)
        {
            yield return TextBlock.Heading("Wait");
            yield return new TextBlock(Texts.Say("sheet.workshop.a-reading-is-doubted-measure"), PageType.Strong, below: 2);
            yield return new TextBlock(answer.Suspects[0].Sentence, PageType.Body, below: 6);
        }

        if (moves.Count == 0 && whole.Count == 0)
        {
            yield return TextBlock.Heading(Texts.Say("sheet.workshop.nothing-to-move"));
            yield return new TextBlock(
                answer.Overall.Verdict == Verdict.True
                    ? Texts.Say("sheet.workshop.every-check-that-was-made")
                    : Texts.Say("sheet.workshop.no-check-is-surely-out"),
                PageType.Body
            );
        }

        if (whole.Count > 0)
        {
            yield return TextBlock.Heading(Texts.Say("sheet.workshop.the-frame-as-a-whole"));
            foreach (var sentence in whole)
            {
                yield return new TextBlock(sentence, PageType.Body, "•", below: 1.5);
            }

            yield return new SpaceBlock(4);
        }

        yield return TextBlock.Heading(Texts.Say("sheet.workshop.how-to-read-this"));
        string[] rules =
        [
            Texts.Say("sheet.workshop.left-and-right-are-the"),
            Texts.Say("sheet.workshop.lengths-are-in-plan-between"),
            Texts.Say("sheet.workshop.sure-to-is-how-well"),
            Texts.Say("sheet.workshop.points-drawn-as-true-are"),
        ];
        foreach (var rule in rules)
        {
            yield return new TextBlock(rule, PageType.Body, "•", below: 1.5);
        }
    }

    private static TableBlock MoveTable(CarFile car, IReadOnlyList<WorkshopMove> moves)
    {
        var display = ShownLengths.Of(car);
        TableColumn[] columns =
        [
            new(Texts.Say("sheet.workshop.point"), 0.9),
            new(Texts.Say("sheet.workshop.move-it"), 1.7),
            new(Texts.Say("sheet.workshop.sure-to"), 0.9),
            new(Texts.Say("sheet.workshop.measure-from"), 1),
            new(Texts.Say("sheet.workshop.now", SheetWords.Unit(car)), 0.9, IsRight: true),
            new(Texts.Say("sheet.workshop.wanted", SheetWords.Unit(car)), 0.9, IsRight: true),
            new(Texts.Say("sheet.workshop.remark"), 2),
        ];
        return new TableBlock(columns, [.. moves.Select(m => Row(display, m))], padding: 2.5);
    }

    private static IReadOnlyList<TableCell> Row(LengthDisplay display, WorkshopMove move) =>
        [
            new TableCell(move.Point, PageType.CellStrong),
            Lines(move.Parts.Select(p => $"{display.Text(p.AmountMetres)} {Towards(p.Direction)}"), PageType.CellStrong),
            Lines(move.Parts.Select(p => SheetWords.PlusMinus(display, ShownLengths.Coverage * p.UMetres)), PageType.Cell),
            Lines(move.Guides.Select(g => g.Kind == GuideKind.Rise ? Texts.Say("sheet.workshop.above", g.From) : g.From), PageType.Cell),
            Lines(move.Guides.Select(g => display.Number(g.NowMetres)), PageType.Cell),
            Lines(move.Guides.Select(g => display.Number(g.WantedMetres)), PageType.CellStrong),
            new TableCell(Remark(move), PageType.Small),
        ];

    private static TableCell Lines(IEnumerable<string> lines, Lettering lettering) =>
        new([.. lines.Select(l => (l, lettering))]) { IsStacked = true };

    private static string Towards(MoveDirection direction) =>
        direction switch
        {
            MoveDirection.Forward => Texts.Say("sheet.workshop.forward"),
            MoveDirection.Rearward => Texts.Say("sheet.workshop.rearward"),
            MoveDirection.Left => Texts.Say("sheet.workshop.to-the-left"),
            MoveDirection.Right => Texts.Say("sheet.workshop.to-the-right"),
            MoveDirection.Up => Texts.Say("sheet.workshop.up"),
            MoveDirection.Down => Texts.Say("sheet.workshop.down"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static string Remark(WorkshopMove move) =>
        move.Against == DeviationFrom.Nominal ? Texts.Say("sheet.workshop.against-the-book")
        : move.IsOneOfAPair ? Texts.Say("sheet.workshop.against-its-partner-symmetry-cannot")
        : Texts.Say("sheet.workshop.against-its-partner-mirrored-the");
}
