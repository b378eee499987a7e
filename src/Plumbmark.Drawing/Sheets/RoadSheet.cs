using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Road;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Drawing.Sheets;

/// <summary>What the wheels will do, on paper: figures against the book with what makes them, what the adjusters can reach, and the wheel check.</summary>
public static class RoadSheet
{
    /// <summary>The sheet as PDF.</summary>
    public static byte[] Pdf(CarFile car, RoadAnswer answer, SheetOptions options) =>
        new SheetDocument(
            Texts.Say("sheet.road.road-sheet"),
            SheetWords.SubjectOf(car, options),
            options,
            [.. Blocks(RoadDisplay.Of(car), answer)]
        ).Pdf();

    private static IEnumerable<Block> Blocks(RoadDisplay display, RoadAnswer answer) =>
        [
            new VerdictBlock(answer.Verdict, answer.Headline),
            .. Sentences(Texts.Say("sheet.road.why"), answer.Why),
            .. Pictures(display, answer),
            .. Figures(display, answer.Figures),
            .. Settings(display, answer.Settings),
            .. Wheels(display, answer),
            .. Sentences(Texts.Say("sheet.road.would-sharpen-it-most"), [.. answer.Unmeasured.Select(u => RoadText.Line(u, display))]),
            .. Sentences(Texts.Say("sheet.road.missing"), answer.Missing),
            .. Sentences(Texts.Say("sheet.road.taken-as-drawn-or-otherwise"), answer.Assumed),
            .. SheetWords.CautionBlocks(answer.Cautions),
        ];

    private static IEnumerable<Block> Pictures(RoadDisplay display, RoadAnswer answer)
    {
        if (answer.Sketches.Count == 0)
        {
            yield break;
        }

        var small = new RoadDrawingOptions();
        yield return new ColumnsBlock(
            [new PictureBlock(RoadFrontDrawing.Of(answer, small), 190)],
            [new PictureBlock(RoadTopDrawing.Of(answer, display, small), 270)],
            0.5
        );
    }

    private static IEnumerable<Block> Figures(RoadDisplay display, IReadOnlyList<RoadFigure> figures)
    {
        if (figures.Count == 0)
        {
            yield break;
        }

        yield return TextBlock.Heading(Texts.Say("sheet.road.as-frame-and-parts-would"));
        yield return new TextBlock(Texts.Say("sheet.road.is-how-sure-a-value"), PageType.Small, staysWithNext: true);
        TableColumn[] columns =
        [
            new(Texts.Say("sheet.road.what"), 1.9),
            new(Texts.Say("sheet.road.value"), 1, IsRight: true),
            new(Texts.Say("sheet.road.sure-to"), 0.9, IsRight: true),
            new(Texts.Say("sheet.road.as-drawn"), 1, IsRight: true),
            new(Texts.Say("sheet.road.the-book-asks"), 1.8),
            new(Texts.Say("sheet.road.verdict"), 1.2),
            new(Texts.Say("sheet.road.what-makes-the-difference"), 2.4),
        ];
        yield return new TableBlock(columns, [.. figures.Select(f => Row(display, f))], padding: 0.9);
    }

    private static IReadOnlyList<TableCell> Row(RoadDisplay display, RoadFigure figure) =>
        [
            new TableCell(Capital(RoadNames.Of(figure.Kind, figure.Side))),
            new TableCell(display.Said(figure.Kind, figure.Value)),
            new TableCell(
                figure.IsAsDrawn ? Texts.Say("sheet.road.as-drawn-2") : $"±{display.Size(figure.Kind, ShownUncertainty * figure.U)}"
            ),
            new TableCell(display.Said(figure.Kind, figure.Drawn)),
            new TableCell(figure.Book is { } book ? RoadText.Asked(book, display) : Texts.Say("sheet.road.nothing"), PageType.CellSmall),
            new TableCell(
                figure.Book is null ? "" : SheetWords.For(figure.Verdict),
                figure.Verdict is null ? PageType.Small : SheetWords.LetteringFor(figure.Verdict)
            ),
            new TableCell(RoadText.Shares(figure, display), PageType.Small),
        ];

    // From a standard uncertainty to one that holds 95 times in 100 (JCGM 100:2008, G.1.3 with k = 2).
    private const double ShownUncertainty = 2;

    private static IEnumerable<Block> Settings(RoadDisplay display, IReadOnlyList<SideSettings> settings)
    {
        if (settings.Count == 0)
        {
            yield break;
        }

        yield return TextBlock.Heading(Texts.Say("sheet.road.what-the-adjusters-can-do"));
        foreach (var sentence in settings.SelectMany(s => s.Sentences))
        {
            yield return new TextBlock(sentence, PageType.Body, "•", below: 1);
        }

        var rows = settings.SelectMany(s => s.Settings.Select(a => (s.Side, Setting: a))).ToList();
        if (rows.Count == 0)
        {
            yield break;
        }

        TableColumn[] columns =
        [
            new(Texts.Say("sheet.road.adjuster"), 2),
            new(Texts.Say("sheet.road.side"), 1),
            new(Texts.Say("sheet.road.from"), 1, IsRight: true),
            new(Texts.Say("sheet.road.to"), 1, IsRight: true),
            new(Texts.Say("sheet.road.remark"), 2),
        ];
        yield return new TableBlock(
            columns,
            [
                .. rows.Select(r =>
                    (IReadOnlyList<TableCell>)
                        [
                            new TableCell(r.Setting.Adjuster.Id, PageType.CellStrong),
                            new TableCell(RoadNames.Of(r.Side)),
                            new TableCell(display.SignedLength(r.Setting.FromMetres)),
                            new TableCell(display.SignedLength(r.Setting.ToMetres)),
                            new TableCell(
                                r.Setting.IsUnusual ? Texts.Say("sheet.road.more-than-usual")
                                    : r.Setting.IsAtItsEnd ? Texts.Say("sheet.road.at-its-end")
                                    : "",
                                PageType.Small
                            ),
                        ]
                ),
            ],
            padding: 0.9
        );
    }

    private static IEnumerable<Block> Wheels(RoadDisplay display, RoadAnswer answer)
    {
        if (answer.Wheels.Count == 0)
        {
            yield break;
        }

        yield return TextBlock.Heading(Texts.Say("sheet.road.read-at-the-wheels"));
        TableColumn[] columns =
        [
            new(Texts.Say("sheet.road.what"), 2.4),
            new(Texts.Say("sheet.road.value"), 1, IsRight: true),
            new(Texts.Say("sheet.road.sure-to"), 1, IsRight: true),
            new(Texts.Say("sheet.road.verdict"), 1.2),
            new(Texts.Say("sheet.road.remark"), 3),
        ];
        yield return new TableBlock(
            columns,
            [
                .. answer.Wheels.Select(w =>
                    (IReadOnlyList<TableCell>)
                        [
                            new TableCell(Capital(RoadText.NameOf(w))),
                            new TableCell(display.Said(w.Kind, w.Value)),
                            new TableCell($"±{display.Size(w.Kind, ShownUncertainty * w.U)}"),
                            new TableCell(SheetWords.For(w.Verdict), SheetWords.LetteringFor(w.Verdict)),
                            new TableCell(string.Join(" ", w.Remarks), PageType.Small),
                        ]
                ),
            ],
            padding: 0.9
        );
        foreach (var remark in answer.WheelRemarks)
        {
            yield return new TextBlock(remark, PageType.Body, "•", below: 1);
        }
    }

    private static IEnumerable<Block> Sentences(string heading, IReadOnlyList<string> sentences)
    {
        if (sentences.Count == 0)
        {
            yield break;
        }

        yield return TextBlock.Heading(heading);
        foreach (var sentence in sentences)
        {
            yield return new TextBlock(Capital(sentence), PageType.Body, "•", below: 1);
        }

        yield return new SpaceBlock(3);
    }

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
