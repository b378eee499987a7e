using Plumbmark.Drawing.Floor;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The tables of the frame sheet, row by row against the answer, as an independent reader (PdfPig) finds them on the page.</summary>
public sealed class FrameRowTests
{
    private static readonly (CarFile Car, FloorAnswer Answer) s_demo = EverySheet.Car("demo");

    private static readonly IReadOnlyList<string> s_lines = Lines(
        FrameSheet.Pdf(s_demo.Car, s_demo.Answer, new SheetOptions(Paper.A4, new DateOnly(2026, 5, 4), "9.8.7"))
    );

    /// <summary>Words of one baseline, from left to right.</summary>
    private static IReadOnlyList<string> Lines(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return
        [
            .. document
                .GetPages()
                .SelectMany(page =>
                    page.GetWords()
                        .GroupBy(w => Math.Round(w.Letters[0].StartBaseLine.Y, 1))
                        .OrderByDescending(g => g.Key)
                        .Select(g => string.Join(' ', g.OrderBy(w => w.BoundingBox.Left).Select(w => w.Text)))
                ),
        ];
    }

    [Fact]
    public void EveryPair_StandsOnItsRowWithItsFourValues()
    {
        var display = ShownLengths.Of(s_demo.Car);
        Assert.NotEmpty(s_demo.Answer.Pairs);
        foreach (var pair in s_demo.Answer.Pairs)
        {
            var row = Assert.Single(s_lines, l => l.StartsWith($"{pair.Left} – {pair.Right} ", StringComparison.Ordinal));
            var at = 0;
            foreach (
                var (value, u) in new[]
                {
                    (pair.SideShiftMetres, pair.USideShiftMetres),
                    (pair.StaggerMetres, pair.UStaggerMetres),
                    (pair.WidthMetres, pair.UWidthMetres),
                    (
                        pair.LevelledHeightDifferenceMetres ?? pair.HeightDifferenceMetres,
                        pair.ULevelledHeightDifferenceMetres ?? pair.UHeightDifferenceMetres
                    ),
                }
            )
            {
                var shown =
                    value is { } v && u is { } standard
                        ? $"{display.Number(Math.Abs(v))} {SheetWords.PlusMinus(display, ShownLengths.Coverage * standard)}"
                        : "not ";
                var found = row.IndexOf(shown, at, StringComparison.Ordinal);
                Assert.True(found >= 0, $"\"{shown}\" behind column {at} of: {row}");
                at = found + shown.Length;
            }
        }
    }

    [Fact]
    public void EveryOtherCheck_StandsOnItsRowWithLimitSourceAndVerdict()
    {
        var display = ShownLengths.Of(s_demo.Car);
        var inPairs = s_demo.Answer.Pairs.Select(p => p.Left).ToHashSet(StringComparer.Ordinal);
        var others = s_demo.Answer.Checks.Where(c => !(FramePairs.Kinds.Contains(c.Kind) && c.Points.Any(inPairs.Contains))).ToList();
        Assert.NotEmpty(others);
        foreach (var check in others)
        {
            var sure = SheetWords.PlusMinus(display, ShownLengths.Coverage * check.UMetres);
            var limit = check is { LimitMetres: { } l, LimitSource: { } s }
                ? $"{SheetWords.PlusMinus(display, l)} ({SheetWords.For(s)})"
                : "not known";
            var end = $"{display.Number(check.ValueMetres)} {sure} {limit} {SheetWords.For(check.Verdict)}";
            Assert.Contains(
                s_lines,
                r => r.StartsWith(CheckWords.For(check.Kind), StringComparison.Ordinal) && r.EndsWith(end, StringComparison.Ordinal)
            );
        }
    }

    [Fact]
    public void EveryReading_StandsOnItsRowAsWrittenDown() =>
        Assert.All(
            s_demo.Car.StandingReadings,
            r =>
                Assert.Contains(
                    s_lines,
                    l =>
                        l.Contains(
                            $"{r.Id} {ReadingWords.Short(r)} {ReadingWords.WithoutUnit(ReadingWords.Value(r), s_demo.Car.Units)}",
                            StringComparison.Ordinal
                        )
                )
        );
}
