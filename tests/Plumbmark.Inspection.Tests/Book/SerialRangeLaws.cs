using CsCheck;
using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Tests.Book;

/// <summary>No overlap unnoticed, no gap unnoticed: judged by trying every number of a small series one by one.</summary>
public class SerialRangeLaws
{
    private const int Most = 30;

    private static readonly Gen<SerialRange> s_range = Gen.Select(
        Gen.Int[1, Most],
        Gen.Int[1, Most],
        Gen.Int[0, 5],
        Gen.Bool,
        (a, b, open, zeros) =>
            new SerialRange(open == 0 ? null : Serial(Math.Min(a, b), zeros), open == 1 ? null : Serial(Math.Max(a, b), zeros))
    );

    [Fact]
    public void With_SharesExactlyTheNumbersThatLieInBoth() =>
        Gen.Select(s_range, s_range)
            .Sample(
                (a, b) =>
                {
                    var expected = Numbers(a).Intersect(Numbers(b)).ToList();
                    var shared = a.With(b).Match(_ => [], s => Numbers(s.Range), _ => throw new InvalidOperationException());
                    Assert.Equal(expected, shared);
                    Assert.Equal(a.With(b), b.With(a));
                },
                iter: 2000
            );

    [Fact]
    public void Coverage_TellsEveryNumberThatLiesInTwoRanges_AndNoOther() =>
        s_range
            .List[1, 5]
            .Sample(
                ranges =>
                {
                    var told = SerialCoverage
                        .Of(ranges)
                        .Overlaps.SelectMany(o => Numbers(((SerialOverlap.Shared)o.Overlap).Range))
                        .ToHashSet();
                    var twice = All.Where(n => ranges.Count(r => Has(r, n)) >= 2).ToHashSet();
                    Assert.Equal(twice, told);
                },
                iter: 2000
            );

    [Fact]
    public void Coverage_TellsEveryNumberBetweenRangesThatLiesInNone_AndNoOther() =>
        s_range
            .List[1, 5]
            .Sample(
                ranges =>
                {
                    var told = SerialCoverage.Of(ranges).Gaps.SelectMany(Numbers).ToHashSet();
                    var covered = All.Where(n => ranges.Exists(r => Has(r, n))).ToList();
                    var first = ranges.Exists(r => r.From is null) ? 0 : (int)ranges.Min(r => r.From!.Number);
                    var last = ranges.Exists(r => r.To is null) ? Most + 1 : (int)ranges.Max(r => r.To!.Number);
                    var between = All.Where(n => n > first && n < last).Except(covered).ToHashSet();
                    Assert.Equal(between, told);
                },
                iter: 2000
            );

    [Fact]
    public void Coverage_RangesThatFollowEachOther_HaveNeitherGapNorOverlap() =>
        Gen.Int[1, Most - 2]
            .Sample(last =>
            {
                var coverage = SerialCoverage.Of([
                    new SerialRange(null, Serial(last, true)),
                    new SerialRange(Serial(last + 1, false), null),
                ]);
                Assert.Empty(coverage.Overlaps);
                Assert.Empty(coverage.Gaps);
                Assert.Empty(coverage.ClosedEnds);
            });

    [Fact]
    public void Coverage_OfAnotherSeries_IsCountedForItself()
    {
        var coverage = SerialCoverage.Of([
            new SerialRange(SerialNumber.Read("QD 1"), SerialNumber.Read("QD 9")),
            new SerialRange(SerialNumber.Read("QE 20"), null),
        ]);
        Assert.Empty(coverage.Gaps);
        Assert.Empty(coverage.Overlaps);
        Assert.Equal(
            [
                "Nothing is said of numbers before QD 1.",
                "Nothing is said of numbers after QD 9.",
                "Nothing is said of numbers before QE 20.",
            ],
            coverage.ClosedEnds
        );
    }

    private static IEnumerable<int> All => Enumerable.Range(1, Most);

    private static bool Has(SerialRange range, int number) => range.Contains(Serial(number, number % 2 == 0)) == SerialFit.Applies;

    private static List<int> Numbers(SerialRange range) => [.. All.Where(n => Has(range, n))];

    private static SerialNumber Serial(int number, bool zeros) => SerialNumber.Read(zeros ? $"Q.D. {number:00000}" : $"QD{number}")!;
}
