using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>A form to fill in with a pencil beside the frame: in walking order, with the drawing, and boxes for whole inches and fractions.</summary>
public static class BlankForm
{
    // A pencil in a cold hand writes about 6 mm high (common practice, no source).
    private const double BoxHeight = 18;
    private const int EmptyLines = 6;
    private const int MostRowsDown = 10;

    /// <summary>The form as PDF.</summary>
    /// <param name="car">The car whose points are to be measured.</param>
    /// <param name="round">What to measure, in walking order; the numbers are those of the screen for typing the form in.</param>
    /// <param name="options">Paper, date, version.</param>
    /// <param name="number">What the screen for typing the form in knows it by; null when it is not to be typed in there.</param>
    public static byte[] Pdf(CarFile car, IReadOnlyList<RoundLine> round, SheetOptions options, string? number = null)
    {
        var title = number is null ? Texts.Say("sheet.blank-form.measuring-form") : Texts.Say("sheet.blank-form.measuring-form-2", number);
        return new SheetDocument(title, SheetWords.SubjectOf(car, options), options, [.. Blocks(car, round)]).Pdf();
    }

    private static IEnumerable<Block> Blocks(CarFile car, IReadOnlyList<RoundLine> round)
    {
        var untouched = new FloorAnswer(
            new OverallAnswer(Verdict.CannotTellYet, "", [], []),
            [],
            new AdjustmentSummary(0, null, null),
            [],
            [],
            [],
            [],
            [],
            [],
            [],
            []
        );
        var plan = FloorPlanDrawing.Of(
            car with
            {
                Readings = [],
            },
            untouched,
            new FloorDrawingOptions(Width: FrameSheet.PaperWidth, TallestFrame: 380, HasLegend: false)
        );
        yield return new SpaceBlock(4);
        yield return new ColumnsBlock([new PictureBlock(plan, 330)], [.. Instructions(car)], 0.45);
        yield return new SpaceBlock(5);
        if (round.Count == 0)
        {
            yield return new TextBlock(Texts.Say("sheet.blank-form.nothing-is-left-to-ask"), PageType.Strong);
        }

        foreach (var group in round.GroupBy(l => l.Kind).OrderBy(g => g.Key))
        {
            yield return TextBlock.Heading(Heading(group.Key, car.Units));
            yield return Table(group.Key, car.Units, [.. group]);
        }

        yield return TextBlock.Heading(Texts.Say("sheet.blank-form.anything-else-you-measured"));
        var empty = Enumerable.Range(0, EmptyLines).Select(_ => new RoundLine(0, RoundKind.Plan, "", ""));
        yield return Table(RoundKind.Plan, car.Units, [.. empty]);
    }

    private static IEnumerable<Block> Instructions(CarFile car)
    {
        yield return new TableBlock(
            [
                new(Texts.Say("sheet.blank-form.measured-by"), 1.2),
                new(Texts.Say("sheet.blank-form.on"), 0.8),
                new(Texts.Say("sheet.blank-form.tape-its-class"), 1.2),
                new(Texts.Say("sheet.blank-form.heights-with"), 1),
            ],
            [
                [Boxed(""), Boxed(""), Boxed(""), Boxed("")],
            ],
            isBox: true
        );
        string[] hints =
        [
            Texts.Say("sheet.blank-form.left-and-right-are-the"),
            Texts.Say("sheet.blank-form.drop-every-point-first-a"),
            car.Units == LengthUnit.Inch
                ? Texts.Say("sheet.blank-form.write-the-fraction-as-you")
                : Texts.Say("sheet.blank-form.write-millimetres-as-you-read"),
            Texts.Say("sheet.blank-form.zero-a-hook-gets-bent", car.Units == LengthUnit.Inch ? "10 in" : "100 mm"),
            Texts.Say("sheet.blank-form.height-line-one-line-for"),
            Texts.Say("sheet.blank-form.a-line-you-cannot-reach"),
            .. Cautions.Form,
        ];
        foreach (var hint in hints)
        {
            yield return new TextBlock(hint, PageType.Body, "•", below: 2);
        }
    }

    private static string Heading(RoundKind kind, LengthUnit units)
    {
        var unit = units == LengthUnit.Inch ? Texts.Say("sheet.blank-form.inches") : Texts.Say("sheet.blank-form.millimetres");
        return kind switch
        {
            RoundKind.Height => Texts.Say("sheet.blank-form.heights-above-the-level-line", unit),
            RoundKind.Rise => Texts.Say("sheet.blank-form.rises-how-much-higher-the", unit),
            RoundKind.Drop => Texts.Say("sheet.blank-form.drop-again-where-the-new", unit),
            RoundKind.Plan => Texts.Say("sheet.blank-form.lengths-between-floor-marks-front", unit),
            RoundKind.Direct => Texts.Say("sheet.blank-form.lengths-from-point-to-point", unit),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static TableBlock Table(RoundKind kind, LengthUnit units, IReadOnlyList<RoundLine> lines)
    {
        var isLong = kind is RoundKind.Plan or RoundKind.Direct;
        IEnumerable<TableColumn> value =
            kind == RoundKind.Drop
                ? [.. Value(units, "forward"), .. Value(units, "left")]
                : Value(units, units == LengthUnit.Inch ? "whole" : "read");
        List<TableColumn> columns =
        [
            new(Texts.Say("sheet.blank-form.no"), 0.5),
            new(kind is RoundKind.Height or RoundKind.Drop ? Texts.Say("sheet.blank-form.point") : "From – to", 1.35),
            .. value,
            .. isLong ? [new TableColumn(Texts.Say("sheet.blank-form.tape-starts-at"), 0.9)] : Array.Empty<TableColumn>(),
            new(Texts.Say("sheet.blank-form.remark"), kind is RoundKind.Height ? 1.4 : 0.95),
        ];
        // Short lines go side by side.
        var across = 2;
        var rowCount = (lines.Count + across - 1) / across;
        // A long list runs over pages: then its numbers go across, so that no page jumps ahead.
        var goesDown = rowCount <= MostRowsDown;
        var rows = Enumerable
            .Range(0, rowCount)
            .Select(r =>
                Enumerable.Range(0, across).SelectMany(c => Cells(lines, goesDown ? (c * rowCount) + r : (r * across) + c, columns))
            );
        var all = Enumerable.Range(0, across).SelectMany(_ => columns);
        return new TableBlock([.. all], [.. rows.Select(r => (IReadOnlyList<TableCell>)[.. r])], isBox: true);
    }

    private static IEnumerable<TableColumn> Value(LengthUnit units, string word) =>
        units == LengthUnit.Inch ? [new(word, 0.9), new("fraction", 0.95)] : [new(word, 1.4)];

    private static IEnumerable<TableCell> Cells(IReadOnlyList<RoundLine> lines, int index, IReadOnlyList<TableColumn> columns)
    {
        if (index >= lines.Count)
        {
            return columns.Select(_ => TableCell.Empty);
        }

        var line = lines[index];
        var what = line.To is { Length: > 0 } to ? $"{line.From} – {to}" : line.From;
        return columns.Select(
            (c, i) =>
                i switch
                {
                    0 => Boxed(line.Number == 0 ? "" : $"{line.Number}"),
                    1 => new TableCell([(what, PageType.CellStrong)], BoxHeight),
                    _ when c.Head == "fraction" => new TableCell([("/", PageType.FractionBar)], BoxHeight) { IsCentred = true },
                    _ => Boxed(""),
                }
        );
    }

    private static TableCell Boxed(string text) => new([(text, PageType.Cell)], BoxHeight);
}
