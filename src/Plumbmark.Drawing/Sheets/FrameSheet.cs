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

    // How tall the plan and the side view may be, how many of each list stand beside them, and how large it is printed: the first that leaves one page wins.
    private static readonly Room[] s_rooms =
    [
        new(520, 140, 4, 1, 0.46),
        new(450, 115, 4, 1, 0.46),
        new(390, 95, 4, 1, 0.46),
        new(340, 80, 4, 1, 0.46),
        new(300, 65, 4, 1, 0.46),
        new(270, 50, 4, 1, 0.46),
        new(340, 70, 4, 0.9, 0.42),
        new(300, 60, 3, 0.9, 0.4),
        new(340, 60, 3, 0.82, 0.4),
        new(300, 55, 3, 0.82, 0.38),
        new(270, 45, 2, 0.82, 0.36),
        new(270, 45, 1, 0.82, 0.4),
        new(300, 0, 2, 0.82, 0.36),
        new(270, 45, 2, 0.78, 0.34),
        new(270, 0, 2, 0.78, 0.34),
        new(240, 0, 1, 0.78, 0.34),
        new(260, 0, 1, 0.75, 0.34),
    ];

    /// <summary>The sheet as PDF: on one page when drawing, lists and lettering can be made to leave room for the rest.</summary>
    public static byte[] Pdf(CarFile car, FloorAnswer answer, SheetOptions options)
    {
        var tries = car.Frame.Points.Count <= MostPointsBeside ? s_rooms : s_rooms[..1];
        SheetDocument? shortest = null;
        foreach (var document in tries.Select(room => Document(car, answer, options, room)))
        {
            if (shortest is null || document.PageCount < shortest.PageCount)
            {
                shortest = document;
            }

            if (shortest.PageCount == 1)
            {
                break;
            }
        }

        return shortest!.Pdf();
    }

    private static SheetDocument Document(CarFile car, FloorAnswer answer, SheetOptions options, Room room) =>
        new(
            "Frame sheet",
            SheetWords.SubjectOf(car, options),
            options,
            [.. Blocks(car, answer, room, PageFrame.Of(options.Paper).Printed(room.Scale).TextWidth)]
        )
        {
            Scale = room.Scale,
        };

    private static IEnumerable<Block> Blocks(CarFile car, FloorAnswer answer, Room room, double width) =>
        [
            new VerdictBlock(answer.Overall.Verdict, answer.Overall.Headline),
            .. Front(car, answer, room),
            .. FramePairs.Blocks(car, answer),
            .. FrameChecks.Blocks(car, answer),
            .. FullLists(answer, room.Most),
            .. FrameReadings.Blocks(car, answer, width),
            .. SheetWords.CautionBlocks(Cautions.Frame),
        ];

    private static IEnumerable<Block> Front(CarFile car, FloorAnswer answer, Room room)
    {
        if (car.Frame.Points.Count > MostPointsBeside)
        {
            var large = FloorPlanDrawing.Of(car, answer, new FloorDrawingOptions(Width: 600, TallestFrame: 560));
            return [.. Beside(answer, room.Most), new PictureBlock(large, 560), .. Heights(car, answer, 600, room.Side)];
        }

        var plan = FloorPlanDrawing.Of(car, answer, new FloorDrawingOptions(Width: PaperWidth, TallestFrame: room.Plan));
        IReadOnlyList<Block> left = [new PictureBlock(plan, 420)];
        IReadOnlyList<Block> right = [.. Beside(answer, room.Most)];
        IReadOnlyList<Block> heights = [.. Heights(car, answer, PaperWidth, room.Side)];
        // The heights go below whichever column is shorter.
        var width = PageFrame.Of(Paper.A4).Printed(room.Scale).TextWidth;
        var isRightShorter = right.Sum(b => b.Height(width * (1 - room.LeftShare))) < left.Sum(b => b.Height(width * room.LeftShare));
        return isRightShorter
            ? [new ColumnsBlock(left, [.. right, .. heights], room.LeftShare, isCuttable: true)]
            : [new ColumnsBlock([.. left, .. heights], right, room.LeftShare, isCuttable: true)];
    }

    private static IEnumerable<Block> Beside(FloorAnswer answer, int most)
    {
        // What is doubted is told once, under its own heading, though it may be a reason and the next reading as well.
        var doubted = answer.Suspects.Select(s => s.Sentence).Distinct(StringComparer.Ordinal).ToList();
        return
        [
            .. List("Why", answer.Overall.Why.Except(doubted, StringComparer.Ordinal), most + 2),
            .. doubted.Count <= most ? List("Doubted readings", doubted, most) : [],
            .. Unknown(answer).Count() <= most ? List("What is not known", Unknown(answer), most) : [],
            .. List("Measure next", answer.Next.Select(n => n.Sentence).Except(doubted, StringComparer.Ordinal), most),
        ];
    }

    private static IEnumerable<string> Unknown(FloorAnswer answer) =>
        answer.Overall.Floating.Select(f => f.Sentence).Concat(BlindSpotWords.Of(answer.BlindSpots));

    /// <summary>The lists that are too long to stand beside the drawing: what is not known is never cut short.</summary>
    private static IEnumerable<Block> FullLists(FloorAnswer answer, int most)
    {
        if (Unknown(answer).Count() > most)
        {
            foreach (var block in List("What is not known", Unknown(answer), int.MaxValue))
            {
                yield return block;
            }
        }

        if (answer.Suspects.Count > most)
        {
            foreach (var block in List("Doubted readings", answer.Suspects.Select(s => s.Sentence), int.MaxValue))
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
        tallest > 0 && answer.Points.Any(p => p.ZMetres is not null)
            ?
            [
                TextBlock.Heading("Heights"),
                new PictureBlock(
                    FloorSideDrawing.Of(car, answer, new FloorDrawingOptions(Width: width, TallestFrame: tallest, HasLegend: false)),
                    170
                ),
            ]
            : [];

    /// <summary>How much room the parts of the sheet are given.</summary>
    /// <param name="Plan">How tall the plan may be, picture units.</param>
    /// <param name="Side">How tall the side view may be, picture units; 0 leaves it out, the table has its numbers.</param>
    /// <param name="Most">How many of each list stand beside the drawing; the rest is told in full further on.</param>
    /// <param name="Scale">How large everything is printed.</param>
    /// <param name="LeftShare">The part of the width that the drawing takes.</param>
    private sealed record Room(double Plan, double Side, int Most, double Scale, double LeftShare);
}
