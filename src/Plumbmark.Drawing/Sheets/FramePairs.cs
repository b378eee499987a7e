using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The table of pairs: left against right, each value with how sure it is and its verdict.</summary>
internal static class FramePairs
{
    public static readonly IReadOnlyList<string> Kinds = ["sideShift", "stagger", "width", "heightDifference"];

    public static IEnumerable<Block> Blocks(CarFile car, FloorAnswer answer)
    {
        if (answer.Pairs.Count == 0)
        {
            yield break;
        }

        var display = ShownLengths.Of(car);
        yield return TextBlock.CloseHeading(Texts.Say("sheet.frame-pairs.left-against-right", SheetWords.Unit(car)));
        yield return new TextBlock(
            Texts.Say("sheet.frame-pairs.is-how-sure-a-value") + LimitWords(car),
            PageType.DenseGrey,
            staysWithNext: true
        );
        TableColumn[] columns =
        [
            new(Texts.Say("sheet.frame-pairs.pair"), 0.75),
            new(Texts.Say("sheet.frame-pairs.middle-off-the-centre-line"), 1.75),
            new(Texts.Say("sheet.frame-pairs.ahead-which-side"), 1.75),
            new(Texts.Say("sheet.frame-pairs.width"), 0.9),
            new(Texts.Say("sheet.frame-pairs.higher-which-side"), 1.75),
        ];
        yield return new TableBlock(columns, [.. answer.Pairs.Select(p => Row(display, answer, p))], padding: 0.5);
    }

    private static string LimitWords(CarFile car)
    {
        if (car.Frame.Limits is not { } limits)
        {
            return Texts.Say("sheet.frame-pairs.no-limits-are-set-so");
        }

        string?[] parts =
        [
            limits.Mirror is { } mirror ? Texts.Say("sheet.frame-pairs.side-against-side", mirror.AsTyped) : null,
            limits.Height is { } height ? Texts.Say("sheet.frame-pairs.height", height.AsTyped) : null,
            limits.Point is { } point ? Texts.Say("sheet.frame-pairs.against-the-book", point.AsTyped) : null,
        ];
        var known = parts.OfType<string>().ToList();
        var note = limits.Note is { } text ? $", {text}" : "";
        return known.Count == 0 ? "" : Texts.Say("sheet.frame-pairs.limits", string.Join("; ", known), SheetWords.For(limits.Source), note);
    }

    private static IReadOnlyList<TableCell> Row(LengthDisplay display, FloorAnswer answer, PairEstimate pair)
    {
        var ends = answer.Points.Where(p => p.Id == pair.Left || p.Id == pair.Right).ToList();
        // Measured on both sides and still no value: the pair is built differently, by an amount nobody knows.
        var inPlan =
            ends.Count == 2 && ends.TrueForAll(p => p.XMetres is not null)
                ? Texts.Say("sheet.frame-pairs.not-compared")
                : Texts.Say("sheet.frame-pairs.not-measured");
        var inHeight =
            ends.Count == 2 && ends.TrueForAll(p => p.ZMetres is not null)
                ? Texts.Say("sheet.frame-pairs.not-compared")
                : Texts.Say("sheet.frame-pairs.not-measured");
        Check? For(string kind) => answer.Checks.FirstOrDefault(c => c.Kind == kind && c.Points.Contains(pair.Left));
        return
        [
            new TableCell($"{pair.Left} – {pair.Right}", PageType.DenseStrong),
            Cell(
                display,
                pair.SideShiftMetres,
                pair.USideShiftMetres,
                For("sideShift"),
                Texts.Say("sheet.frame-pairs.left"),
                Texts.Say("sheet.frame-pairs.right"),
                inPlan
            ),
            Cell(
                display,
                pair.StaggerMetres,
                pair.UStaggerMetres,
                For("stagger"),
                Texts.Say("sheet.frame-pairs.left"),
                Texts.Say("sheet.frame-pairs.right"),
                inPlan
            ),
            Cell(display, pair.WidthMetres, pair.UWidthMetres, For("width"), "", "", inPlan),
            Cell(
                display,
                pair.LevelledHeightDifferenceMetres ?? pair.HeightDifferenceMetres,
                pair.ULevelledHeightDifferenceMetres ?? pair.UHeightDifferenceMetres,
                For("heightDifference"),
                Texts.Say("sheet.frame-pairs.left"),
                Texts.Say("sheet.frame-pairs.right"),
                inHeight
            ),
        ];
    }

    private static TableCell Cell(
        LengthDisplay display,
        double? value,
        double? u,
        Check? check,
        string whenPositive,
        string whenNegative,
        string whenMissing
    )
    {
        if (value is not { } metres)
        {
            return new TableCell(whenMissing, PageType.DenseGrey);
        }

        var number = display.Number(Math.Abs(metres));
        var isNone = display.Rounded(metres) == Length.Zero;
        var direction =
            isNone ? ""
            : metres > 0 ? whenPositive
            : whenNegative;
        var sure = u is { } standard ? $" {SheetWords.PlusMinus(display, ShownLengths.Coverage * standard)}" : "";
        var words = $"{direction} {number}{sure}".Trim();
        return check is null
            ? new TableCell(words, PageType.Dense)
            : new TableCell([(words, PageType.Dense), (SheetWords.For(check.Verdict), SheetWords.LetteringFor(check.Verdict).Close())]);
    }
}
