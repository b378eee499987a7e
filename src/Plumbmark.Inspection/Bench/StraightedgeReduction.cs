using Plumbmark.Engine.Fits;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>How straight an edge is, from gaps under a straightedge: the width of the narrowest strip that holds it.</summary>
internal static class StraightedgeReduction
{
    // Papers of one weight differ by about 5 % in thickness.
    private const double PaperShare = 0.05;

    public static void Add(ReductionWork work, Measure.Straightedge m)
    {
        var sigma = work.DoubtOf(m).ReadingMetres;
        Point2[] profile = [.. m.Gaps.Select(g => new Point2(g.At.Metres, Middle(g)))];
        var zone = MinimumZone.Line2(profile).FitOrNull;
        if (zone is null || profile.Select(p => p.X).Distinct().Count() < 3)
        {
            work.Wanting.Add(Texts.Say("bench.straightedge-reduction.the-gaps-along-need-at", DimensionWords.Name(m.Dimension)));
            return;
        }

        var largest = m.Gaps.Max(g => U(g, sigma));
        work.Add(
            new DimensionValue(
                m.Dimension,
                Quantity.Length,
                DimensionNature.Trueness,
                zone.ZoneMetres,
                largest * zone.Sensitivity,
                0,
                m.Tool,
                [m.Id]
            )
        );
    }

    private static double Middle(Gap gap) => gap.Stops is { } stops ? (gap.Goes.Metres + stops.Metres) / 2 : gap.Goes.Metres;

    // Anywhere between what goes and what stops is equally likely: half width over root three (JCGM 100:2008, 4.3.7).
    private static double U(Gap gap, double sigma)
    {
        var bracket = gap.Stops is { } stops ? (stops.Metres - gap.Goes.Metres) / Math.Sqrt(12) : 0;
        var paper = gap.Sheets is null ? 0 : PaperShare * Middle(gap) / Math.Sqrt(3);
        return Math.Sqrt((sigma * sigma) + (bracket * bracket) + (paper * paper));
    }
}
