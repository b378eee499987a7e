using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The frame on paper: drawing, answer with reasons, pairs with verdicts, what is not known, readings, cautions.</summary>
public static class FrameSheet
{
    // Beyond this the drawing takes a page of its own and one page is out of reach.
    private const int MostPointsBeside = 40;

    // Picture units across a column of the page: more than on a phone, so that the letters come out smaller.
    internal const double PaperWidth = 390;

    private const double LeftShare = 0.46;

    /// <summary>How tall the plan and the side view may be, and how many sentences a list beside them has; the rest of it is told further on.</summary>
    private readonly record struct Room(double Plan, double Side, int Sentences);

    private static readonly Room[] s_rooms =
    [
        new(520, 140, 6),
        new(450, 115, 6),
        new(390, 95, 5),
        new(340, 80, 4),
        new(300, 65, 4),
        new(270, 60, 3),
        new(250, 55, 2),
    ];

    /// <summary>
    /// The sheet as PDF: on one page when the drawing can be made to leave room for the rest; else with everything but the readings on the first page when
    /// that can be done.
    /// </summary>
    public static byte[] Pdf(CarFile car, FloorAnswer answer, SheetOptions options)
    {
        var rooms = car.Frame.Points.Count <= MostPointsBeside ? s_rooms : s_rooms[..1];
        SheetDocument Document(IEnumerable<Block> blocks) => new("Frame sheet", SheetWords.SubjectOf(car, options), options, [.. blocks]);
        // The tables do not depend on the room: they are laid out once.
        IReadOnlyList<Block> tables =
        [
            .. FramePairs.Blocks(car, answer),
            .. FrameChecks.Blocks(car, answer),
            .. SheetWords.CautionBlocks(Cautions.Frame),
        ];
        IReadOnlyList<Block> readings = [.. FrameReadings.Blocks(car, answer)];
        SheetDocument? roomiest = null;
        SheetDocument? leadOnOnePage = null;
        foreach (var room in rooms)
        {
            IReadOnlyList<Block> lead =
            [
                new VerdictBlock(answer.Overall.Verdict, answer.Overall.Headline),
                .. Front(car, answer, room),
                .. tables,
            ];
            var whole = Document([.. lead, .. FullLists(answer, room), .. readings]);
            if (whole.PageCount == 1)
            {
                return whole.Pdf();
            }

            leadOnOnePage ??= Document(lead).PageCount == 1 ? whole : null;
            roomiest ??= whole;
        }

        return (leadOnOnePage ?? roomiest!).Pdf();
    }

    private static IEnumerable<Block> Front(CarFile car, FloorAnswer answer, Room room)
    {
        if (car.Frame.Points.Count > MostPointsBeside)
        {
            var large = FloorPlanDrawing.Of(car, answer, new FloorDrawingOptions(Width: 600, TallestFrame: 560));
            return [.. Beside(answer, room), new PictureBlock(large, 560), .. Heights(car, answer, 600, room.Side)];
        }

        var plan = FloorPlanDrawing.Of(car, answer, new FloorDrawingOptions(Width: PaperWidth, TallestFrame: room.Plan));
        IReadOnlyList<Block> left = [new PictureBlock(plan, 420)];
        IReadOnlyList<Block> right = [.. Beside(answer, room)];
        IReadOnlyList<Block> heights = [.. Heights(car, answer, PaperWidth, room.Side)];
        // The heights go below whichever column is shorter.
        const double Narrowest = 523; // A4, less its margins
        var isRightShorter = right.Sum(b => b.Height(Narrowest * (1 - LeftShare))) < left.Sum(b => b.Height(Narrowest * LeftShare));
        return isRightShorter
            ? [new ColumnsBlock(left, [.. right, .. heights], LeftShare, isCuttable: true)]
            : [new ColumnsBlock([.. left, .. heights], right, LeftShare, isCuttable: true)];
    }

    private static IEnumerable<Block> Beside(FloorAnswer answer, Room room)
    {
        // What is doubted is told once, under its own heading, though it may be a reason and the next reading as well.
        var doubted = answer.Suspects.Select(s => s.Sentence).Distinct(StringComparer.Ordinal).ToList();
        foreach (var block in List("Why", answer.Overall.Why.Except(doubted, StringComparer.Ordinal), room.Sentences))
        {
            yield return block;
        }

        foreach (var block in List("Doubted readings", doubted, room.Sentences))
        {
            yield return block;
        }

        foreach (var block in List("What is not known", Unknown(answer), room.Sentences))
        {
            yield return block;
        }

        foreach (
            var block in List("Measure next", answer.Next.Select(n => n.Sentence).Except(doubted, StringComparer.Ordinal), room.Sentences)
        )
        {
            yield return block;
        }
    }

    private static IEnumerable<string> Unknown(FloorAnswer answer) =>
        answer.Overall.Floating.Select(f => f.Sentence).Concat(BlindSpotWords.Of(answer.BlindSpots));

    /// <summary>The lists that were cut short beside the drawing, in full; what to measure next is a matter of the day and is not.</summary>
    private static IEnumerable<Block> FullLists(FloorAnswer answer, Room room)
    {
        IEnumerable<(string Heading, IReadOnlyList<string> Sentences)> lists =
        [
            ("Why, in full", answer.Overall.Why),
            ("What is not known, in full", [.. Unknown(answer)]),
            ("Doubted readings, in full", [.. answer.Suspects.Select(s => s.Sentence).Distinct(StringComparer.Ordinal)]),
        ];
        return lists.Where(l => l.Sentences.Count > room.Sentences).SelectMany(l => List(l.Heading, l.Sentences, int.MaxValue));
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
