using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The sentences of a frame sheet: why, what is doubted, what to measure next, what is not known.</summary>
internal static class FrameLists
{
    // More stand in full below the tables.
    private const int MostDoubtedBeside = 4;
    private const int MostReasons = 12;
    private const int MostNext = 4;

    /// <summary>As many sentences as fit beside or above the drawing: reasons are left out before what to measure next, and what is doubted never is.</summary>
    public static IReadOnlyList<Block> Fitting(FloorAnswer answer, double width, double room)
    {
        var tries =
            from reasons in Enumerable.Range(1, MostReasons)
            from next in Enumerable.Range(1, Math.Min(reasons, MostNext))
            orderby reasons + next descending, reasons descending
            select (IReadOnlyList<Block>)[.. Beside(answer, reasons, next)];
        return tries.FirstOrDefault(t => t.Sum(b => b.Height(width)) <= room) ?? [.. Beside(answer, 1, 1)];
    }

    private static IEnumerable<Block> Beside(FloorAnswer answer, int reasons, int next)
    {
        // What is doubted or not known is told once, under its own heading, though it may be a reason and the next reading as well.
        var doubted = Doubted(answer);
        var told = doubted.Concat(Unknown(answer)).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. List(Texts.Say("sheet.frame-lists.why"), [.. answer.Overall.Why.Where(w => !told.Contains(w))], reasons),
            .. doubted.Count <= MostDoubtedBeside ? List(Texts.Say("sheet.frame-lists.doubted-readings"), doubted, int.MaxValue) : [],
            .. List(
                Texts.Say("sheet.frame-lists.measure-next"),
                [.. answer.Next.Select(n => n.Sentence).Where(s => !told.Contains(s))],
                next
            ),
        ];
    }

    /// <summary>What is not known, never cut short, and what is doubted when it is too long to stand beside the drawing.</summary>
    public static IEnumerable<Block> Full(FloorAnswer answer)
    {
        var doubted = Doubted(answer);
        return
        [
            .. List(Texts.Say("sheet.frame-lists.what-is-not-known"), [.. Unknown(answer)], int.MaxValue),
            .. doubted.Count > MostDoubtedBeside ? List(Texts.Say("sheet.frame-lists.doubted-readings"), doubted, int.MaxValue) : [],
        ];
    }

    private static List<string> Doubted(FloorAnswer answer) =>
        [.. answer.Suspects.Select(s => s.Sentence).Distinct(StringComparer.Ordinal)];

    private static IEnumerable<string> Unknown(FloorAnswer answer) =>
        answer
            .Overall.Floating.Select(f => f.Sentence)
            .Concat(BlindSpotWords.Of(answer.BlindSpots))
            .Concat(answer.Overall.Why.Where(w => w == OverallAnswer.AlikeOnBothSides))
            .Distinct(StringComparer.Ordinal);

    private static IEnumerable<Block> List(string heading, IReadOnlyList<string> sentences, int most)
    {
        if (sentences.Count == 0)
        {
            yield break;
        }

        yield return TextBlock.CloseHeading(heading);
        foreach (var sentence in sentences.Take(most))
        {
            yield return new TextBlock(sentence, PageType.Dense, "•", below: 0.6);
        }

        if (sentences.Count > most)
        {
            yield return new TextBlock(
                Texts.Say("sheet.frame-lists.and-more-see-the-app", sentences.Count - most),
                PageType.DenseGrey,
                " "
            );
        }

        yield return new SpaceBlock(3);
    }
}
