using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;
using Plumbmark.Web.Layout;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>A measure in one line, as typed.</summary>
internal static class MeasureWords
{
    public static string For(Measure measure) =>
        measure switch
        {
            Measure.Plain m => $"{DimensionWords.Name(m.Dimension)}: {Typed(m.Values)}",
            Measure.Angle m => $"{DimensionWords.Name(m.Dimension)}: {Texts.List(m.Degrees.Select(AmountText.Write))}",
            Measure.Bore m => Say(
                "bench.measure.bore-n-n-n",
                DimensionWords.Name(m.Name),
                Typed(m.Mouth),
                m.Deep.Count > 0 ? Say("bench.measure.deep-n", Typed(m.Deep)) : "",
                m.Mate is { } mate ? Say(m.MateIs == BoreMate.Pin ? "bench.measure.mate-pin" : "bench.measure.mate-bush", mate.AsTyped) : ""
            ),
            Measure.Centres m => Say(
                "bench.measure.n-to-n-n",
                DimensionWords.Name(m.From),
                DimensionWords.Name(m.To),
                Over(m.Over),
                Typed(m.Values)
            ),
            Measure.Heights m => Say(
                "bench.measure.above-a-face-at",
                Texts.List(m.Places.Select(p => $"{DimensionWords.Name(p.Dimension)} {p.Height.AsTyped}")),
                Typed([.. m.Face.Select(f => f.Height)])
            ),
            Measure.Straightedge m => Say("bench.measure.n-gaps-n", DimensionWords.Name(m.Dimension), Texts.List(m.Gaps.Select(Gap))),
            Measure.Rods m => Say(
                "bench.measure.rods-in-and",
                DimensionWords.Name(m.From),
                DimensionWords.Name(m.To),
                m.Near is { } n && m.Far is { } f ? Say("bench.measure.n-and-n-apart", n.AsTyped, f.AsTyped) : "",
                m.FromHeights is { } a && m.ToHeights is { } b
                    ? Say("bench.measure.heights-n-n-and", a.First.AsTyped, a.Second.AsTyped, b.First.AsTyped, b.Second.AsTyped)
                    : ""
            ),
            Measure.BackToBack m => Say(
                "bench.measure.back-to-back-2",
                Texts.List(m.Differences.Select(d => Say("bench.measure.n-larger-by-n", DimensionWords.Name(d.Dimension), d.Value.AsTyped)))
            ),
            Measure.SpringLoads m => Say(
                "bench.measure.lengths",
                Texts.List(m.Loads.Select(l => Say("bench.measure.n-under-n", l.Length.AsTyped, AmountText.Write(l.Load))))
            ),
            Measure.RunOut m => Say("bench.measure.n-dial-n", DimensionWords.Name(m.Dimension), Typed(m.Readings)),
            _ => measure.Id,
        };

    private static string Typed(IReadOnlyList<Length> lengths) => Texts.List(lengths.Select(l => l.AsTyped));

    private static string Gap(Gap gap) =>
        gap.Sheets is { } sheets ? Say("bench.measure.n-at-n", Texts.Count("count.sheet", sheets), gap.At.AsTyped)
        : gap.Stops is { } stops ? Say("bench.measure.n-to-n-at", gap.Goes.AsTyped, stops.AsTyped, gap.At.AsTyped)
        : Say("bench.measure.n-at-n", gap.Goes.AsTyped, gap.At.AsTyped);

    private static string Over(CentresOver over) =>
        over switch
        {
            CentresOver.Inside => Say("bench.measure.between-the-edges"),
            CentresOver.Outside => Say("bench.measure.over-the-edges"),
            _ => Say("bench.measure.centre-to-centre"),
        };
}
