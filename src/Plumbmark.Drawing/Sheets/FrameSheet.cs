using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The frame on paper: drawing, answer with reasons, pairs with verdicts, what is not known, readings, cautions.</summary>
public static class FrameSheet
{
    // On the first page the lists are short; what does not fit there is told in full further on.
    private const int MostBesideTheDrawing = 4;

    // Beyond this the drawing takes a page of its own and one page is out of reach.
    private const int MostPointsBeside = 40;

    // Picture units across a column of the page: more than on a phone, so that the letters come out smaller.
    internal const double PaperWidth = 390;

    // How tall the plan and the side view may be: the first pair that leaves one page wins.
    private static readonly (double Plan, double Side)[] s_roominess = [(520, 140), (450, 115), (390, 95), (340, 80), (300, 65), (270, 50)];

    /// <summary>The sheet as PDF: on one page when the drawing can be made to leave room for the rest.</summary>
    public static byte[] Pdf(CarFile car, FloorAnswer answer, SheetOptions options)
    {
        var tries = car.Frame.Points.Count <= MostPointsBeside ? s_roominess : s_roominess[..1];
        var documents = tries.Select(room => Document(car, answer, options, room));
        return (documents.FirstOrDefault(d => d.PageCount == 1) ?? documents.First()).Pdf();
    }

    private static SheetDocument Document(CarFile car, FloorAnswer answer, SheetOptions options, (double Plan, double Side) room) =>
        new("Frame sheet", SheetWords.SubjectOf(car, options), options, [.. Blocks(car, answer, room)]);

    private static IEnumerable<Block> Blocks(CarFile car, FloorAnswer answer, (double Plan, double Side) room) =>
        [
            new VerdictBlock(answer.Overall.Verdict, answer.Overall.Headline),
            .. Front(car, answer, room),
            .. FramePairs.Blocks(car, answer),
            .. FrameChecks.Blocks(car, answer),
            .. FullLists(answer),
            .. FrameReadings.Blocks(car, answer),
            .. SheetWords.CautionBlocks(Cautions.Frame),
        ];

    private static IEnumerable<Block> Front(CarFile car, FloorAnswer answer, (double Plan, double Side) room)
    {
        if (car.Frame.Points.Count > MostPointsBeside)
        {
            var large = FloorPlanDrawing.Of(car, answer, new FloorDrawingOptions(Width: 600, TallestFrame: 560));
            return [.. Beside(answer), new PictureBlock(large, 560), .. Heights(car, answer, 600, room.Side)];
        }

        var plan = FloorPlanDrawing.Of(car, answer, new FloorDrawingOptions(Width: PaperWidth, TallestFrame: room.Plan));
        return [new ColumnsBlock([new PictureBlock(plan, 420)], [.. Beside(answer), .. Heights(car, answer, PaperWidth, room.Side)], 0.46)];
    }

    private static IEnumerable<Block> Beside(FloorAnswer answer)
    {
        // What is doubted is told once, under its own heading, though it may be a reason and the next reading as well.
        var doubted = answer.Suspects.Select(s => s.Sentence).Distinct(StringComparer.Ordinal).ToList();
        foreach (var block in List("Why", answer.Overall.Why.Except(doubted, StringComparer.Ordinal), MostBesideTheDrawing + 2))
        {
            yield return block;
        }

        foreach (var block in List("Doubted readings", doubted, MostBesideTheDrawing))
        {
            yield return block;
        }

        foreach (var block in List("What is not known", Unknown(answer), MostBesideTheDrawing))
        {
            yield return block;
        }

        foreach (
            var block in List(
                "Measure next",
                answer.Next.Select(n => n.Sentence).Except(doubted, StringComparer.Ordinal),
                MostBesideTheDrawing
            )
        )
        {
            yield return block;
        }
    }

    private static IEnumerable<string> Unknown(FloorAnswer answer) =>
        answer.Overall.Floating.Select(f => f.Sentence).Concat(BlindSpotWords.Of(answer.BlindSpots));

    /// <summary>The lists that were cut short beside the drawing, in full.</summary>
    private static IEnumerable<Block> FullLists(FloorAnswer answer)
    {
        if (Unknown(answer).Count() > MostBesideTheDrawing)
        {
            foreach (var block in List("What is not known, in full", Unknown(answer), int.MaxValue))
            {
                yield return block;
            }
        }

        if (answer.Suspects.Count > MostBesideTheDrawing)
        {
            foreach (var block in List("Doubted readings, in full", answer.Suspects.Select(s => s.Sentence), int.MaxValue))
            {
                yield return block;
            }
        }
    }

    private static IEnumerable<Block> List(string heading, IEnumerable<string> sentences, int most)
    {
        var all = sentences.ToList();
        if (all.Count == 0)
        {
            yield break;
        }

        yield return TextBlock.Heading(heading);
        foreach (var sentence in all.Take(most))
        {
            yield return new TextBlock(sentence, PageType.Body, "•", below: 1.5);
        }

        if (all.Count > most)
        {
            yield return new TextBlock($"and {all.Count - most} more", PageType.Small, " ");
        }

        yield return new SpaceBlock(4);
    }

    private static IEnumerable<Block> Heights(CarFile car, FloorAnswer answer, double width, double tallest) =>
        answer.Points.Any(p => p.ZMetres is not null)
            ?
            [
                TextBlock.Heading("Heights"),
                new PictureBlock(
                    FloorSideDrawing.Of(car, answer, new FloorDrawingOptions(Width: width, TallestFrame: tallest, HasLegend: false)),
                    170
                ),
            ]
            : [];
}
