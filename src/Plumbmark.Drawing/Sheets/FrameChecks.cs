using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>Every check that the table of pairs does not show: against the book, twist, sag, and so on.</summary>
internal static class FrameChecks
{
    public static IEnumerable<Block> Blocks(CarFile car, FloorAnswer answer)
    {
        var inPairs = answer.Pairs.Select(p => p.Left).ToHashSet(StringComparer.Ordinal);
        var others = answer.Checks.Where(c => !(FramePairs.Kinds.Contains(c.Kind) && c.Points.Any(inPairs.Contains))).ToList();
        if (others.Count == 0)
        {
            yield break;
        }

        var display = ShownLengths.Of(car);
        yield return TextBlock.CloseHeading(Texts.Say("sheet.frame-checks.other-checks", SheetWords.Unit(car)));
        TableColumn[] columns =
        [
            new(Texts.Say("sheet.frame-checks.what"), 2),
            new(Texts.Say("sheet.frame-checks.points-2"), 2.2),
            new(Texts.Say("sheet.frame-checks.value"), 1, IsRight: true),
            new(Texts.Say("sheet.frame-checks.sure-to"), 1, IsRight: true),
            new(Texts.Say("sheet.frame-checks.limit"), 1.6),
            new(Texts.Say("sheet.frame-checks.verdict"), 1.3),
        ];
        yield return new TableBlock(columns, [.. others.Select(c => Row(display, c))], padding: 0.5);
    }

    private static IReadOnlyList<TableCell> Row(LengthDisplay display, Check check) =>
        [
            Cell(CheckWords.For(check.Kind)),
            Cell(check.Points.Count <= 4 ? string.Join(", ", check.Points) : Texts.Say("sheet.frame-checks.points", check.Points.Count)),
            Cell(display.Number(check.ValueMetres)),
            Cell(SheetWords.PlusMinus(display, ShownLengths.Coverage * check.UMetres)),
            Cell(
                check is { LimitMetres: { } limit, LimitSource: { } source }
                    ? $"{SheetWords.PlusMinus(display, limit)} ({SheetWords.For(source)})"
                    : Texts.Say("sheet.frame-checks.not-known")
            ),
            new TableCell(SheetWords.For(check.Verdict), SheetWords.LetteringFor(check.Verdict).Close()),
        ];

    private static TableCell Cell(string text) => new(text, PageType.Dense);
}
