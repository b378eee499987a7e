using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;

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
        var title = number is null ? "Measuring form" : $"Measuring form {number}";
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
            yield return new TextBlock("Nothing is left to ask for. What you measure all the same goes below.", PageType.Strong);
        }

        foreach (var group in round.GroupBy(l => l.Kind).OrderBy(g => g.Key))
        {
            yield return TextBlock.Heading(Heading(group.Key, car.Units));
            yield return Table(group.Key, car.Units, [.. group]);
        }

        yield return TextBlock.Heading("Anything else you measured");
        var empty = Enumerable.Range(0, EmptyLines).Select(_ => new RoundLine(0, RoundKind.Plan, "", ""));
        yield return Table(RoundKind.Plan, car.Units, [.. empty]);
    }

    private static IEnumerable<Block> Instructions(CarFile car)
    {
        yield return new TableBlock(
            [new("Measured by", 1.2), new("On", 0.8), new("Tape, its class", 1.2), new("Heights with", 1)],
            [
                [Boxed(""), Boxed(""), Boxed(""), Boxed("")],
            ],
            isBox: true
        );
        string[] hints =
        [
            "Left and right are the car's own, seen from the driver's seat.",
            "Drop every point first: a fine cross on paper, the string at the hole's centre. Lift the line off and hang it again for each further drop.",
            car.Units == LengthUnit.Inch
                ? "Write the fraction as you read it: 5 over 16. A number below the line is a minus: write the minus."
                : "Write millimetres as you read them. A height below the line is a minus: write the minus.",
            $"Zero: a hook gets bent. Hold the tape's {(car.Units == LengthUnit.Inch ? "10 in" : "100 mm")} line on the cross, write that under \"Tape starts at\", "
                + "and do not subtract. Leave that box empty only if the tape's own zero lay on the cross.",
            "Height line: one line for all heights, level all round. Check it again at the first point when you are done.",
            "A line you cannot reach: strike it out. Nothing is better than a guess.",
            .. Cautions.Form,
        ];
        foreach (var hint in hints)
        {
            yield return new TextBlock(hint, PageType.Body, "•", below: 2);
        }
    }

    private static string Heading(RoundKind kind, LengthUnit units)
    {
        var unit = units == LengthUnit.Inch ? "inches" : "millimetres";
        return kind switch
        {
            RoundKind.Height => $"Heights above the level line, {unit}: down the left side, up the right",
            RoundKind.Rise => $"Rises: how much higher the second point is, {unit}",
            RoundKind.Drop => $"Drop again: where the new cross lies from the first, {unit}",
            RoundKind.Plan => $"Lengths between floor marks, {unit}: front to rear",
            RoundKind.Direct => $"Lengths from point to point, {unit}",
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
            new("No", 0.5),
            new(kind is RoundKind.Height or RoundKind.Drop ? "Point" : "From – to", 1.35),
            .. value,
            .. isLong ? [new TableColumn("Tape starts at", 0.9)] : Array.Empty<TableColumn>(),
            new("Remark", kind is RoundKind.Height ? 1.4 : 0.95),
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
