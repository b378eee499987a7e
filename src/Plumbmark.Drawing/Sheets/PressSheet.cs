using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Press;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Press;
using CrackMethod = Plumbmark.Inspection.Bench.CrackMethod;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The press record: for each part where it was bent, how it lay, every bite with what it told, every crack test, and where the job stands.</summary>
public static class PressSheet
{
    /// <summary>The sheet as PDF.</summary>
    public static byte[] Pdf(CarFile car, SheetOptions options) =>
        new SheetDocument(Texts.Say("sheet.press.press-record"), SheetWords.SubjectOf(car, options), options, [.. Blocks(car)]).Pdf();

    private static IEnumerable<Block> Blocks(CarFile car)
    {
        yield return new SpaceBlock(4);
        if (car.Press.Count == 0)
        {
            yield return new TextBlock(Texts.Say("sheet.press.no-part-has-been-in"), PageType.Strong);
        }

        var words = new PressWords(car.Units);
        foreach (var block in car.Press.Select(PressReport.Of).SelectMany(r => Job(words, r)))
        {
            yield return block;
        }

        foreach (var block in SheetWords.CautionBlocks(GateWords.Cautions))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Job(PressWords words, PressReport report)
    {
        yield return TextBlock.Heading($"{report.Job.Part.Name}: {words.Headline(report.State)}");
        foreach (var sentence in words.Sentences(report))
        {
            yield return new TextBlock(sentence, PageType.Body, "•", below: 1);
        }

        if (report.Plan is { } plan && report.State is not PressState.Refused)
        {
            yield return new SpaceBlock(4);
            yield return new ColumnsBlock(
                [
                    new PictureBlock(PressSetUpDrawing.Of(plan, words), 170),
                    .. Notes(Texts.Say("sheet.press.how-it-lay"), words.SetUp(plan.Layout)),
                ],
                [
                    .. report.Log is { } log
                        ? new Block[] { new PictureBlock(TravelSetDrawing.Of(plan, log, report.State, words), 190) }
                        : [],
                    .. Notes(Texts.Say("sheet.press.what-to-expect"), words.Expect(plan)),
                ],
                0.5
            );
        }

        foreach (
            var block in Notes(
                Texts.Say("sheet.press.where-it-was-bent"),
                [.. report.Findings.Lines.Select(words.Line), .. words.More(report.Findings)]
            )
        )
        {
            yield return block;
        }

        foreach (var block in Bites(words, report).Concat(CrackTests(report.Job)))
        {
            yield return block;
        }

        yield return new SpaceBlock(6);
    }

    private static IEnumerable<Block> Notes(string heading, IReadOnlyList<string> sentences)
    {
        if (sentences.Count == 0)
        {
            yield break;
        }

        yield return new TextBlock(heading, PageType.Strong, staysWithNext: true, below: 1);
        foreach (var sentence in sentences)
        {
            yield return new TextBlock(sentence, PageType.Small, "•", below: 1);
        }
    }

    private static IEnumerable<Block> Bites(PressWords words, PressReport report)
    {
        if (report.Job.Bites.Count == 0)
        {
            yield break;
        }

        yield return new TextBlock(Texts.Say("sheet.press.every-bite-as-it-was"), PageType.Strong, staysWithNext: true, below: 1);
        TableColumn[] columns =
        [
            new(Texts.Say("sheet.press.bite"), 0.6),
            new(Texts.Say("sheet.press.travel"), 0.9, IsRight: true),
            new(Texts.Say("sheet.press.gauge"), 0.7, IsRight: true),
            new(Texts.Say("sheet.press.left-over"), 0.9, IsRight: true),
            new(Texts.Say("sheet.press.what-it-told"), 3.4),
            new(Texts.Say("sheet.press.why-to-stop"), 2.4),
        ];
        var told = report.Log?.Bites.ToDictionary(b => b.Record.Id, StringComparer.Ordinal) ?? [];
        yield return new TableBlock(columns, [.. report.Job.Bites.Select(b => Row(words, b, told.GetValueOrDefault(b.Id)))], padding: 1);
    }

    private static IReadOnlyList<TableCell> Row(PressWords words, BiteRecord bite, LoggedBite? told) =>
        [
            new TableCell(bite.Id, PageType.Small),
            new TableCell(bite.Travel.AsTyped),
            new TableCell(bite.Load is { } load ? load.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture) : ""),
            new TableCell(bite.Left?.AsTyped ?? (told is null ? "" : words.Text(told.LeftMetres))),
            bite.Withdrawn is { } reason
                ? new TableCell(Texts.Say("sheet.press.taken-back", reason), PageType.Small)
                : new TableCell(string.Join(" ", new[] { told is null ? null : words.Told(told), bite.Note }.OfType<string>())),
            new TableCell(told is null ? "" : string.Join(" ", told.Stops.Select(PressWords.Stop)), PageType.OutSmall),
        ];

    private static IEnumerable<Block> CrackTests(PressJob job)
    {
        if (job.CrackTests.Count == 0)
        {
            yield return new TextBlock(Texts.Say("sheet.press.no-crack-test-is-entered"), PageType.Strong);
            yield break;
        }

        yield return new TextBlock(Texts.Say("sheet.press.crack-tests"), PageType.Strong, staysWithNext: true, below: 1);
        foreach (var test in job.CrackTests)
        {
            var method = test.Method switch
            {
                CrackMethod.Dye => Texts.Say("sheet.press.dye-penetrant"),
                CrackMethod.Magnetic => Texts.Say("sheet.press.magnetic-particles"),
                CrackMethod.Eye => Texts.Say("sheet.press.by-eye-and-glass-which"),
                _ => throw new System.Diagnostics.UnreachableException(),
            };
            var when = test.AfterBite is { } bite
                ? Texts.Say("sheet.press.after-bite", bite)
                : Texts.Say("sheet.press.before-the-first-bite");
            var found = test.Found ? Texts.Say("sheet.press.a-crack-was-found") : Texts.Say("sheet.press.nothing-found-which-does-not");
            var note = test.Note is { } text ? $" {text}" : "";
            yield return new TextBlock($"{method}, {when}: {found}.{note}", test.Found ? PageType.Strong : PageType.Body, "•", below: 1);
        }
    }
}
