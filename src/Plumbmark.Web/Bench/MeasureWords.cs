using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;

namespace Plumbmark.Web.Bench;

/// <summary>A measure in one line, as typed.</summary>
internal static class MeasureWords
{
    public static string For(Measure measure) =>
        measure switch
        {
            Measure.Plain m => $"{DimensionWords.Name(m.Dimension)}: {Typed(m.Values)}",
            Measure.Angle m => $"{DimensionWords.Name(m.Dimension)}: {string.Join(", ", m.Degrees.Select(AmountText.Write))}",
            Measure.Bore m =>
                $"bore {DimensionWords.Name(m.Name)}: {Typed(m.Mouth)}{(m.Deep.Count > 0 ? $"; deep {Typed(m.Deep)}" : "")}{(m.Mate is { } mate ? $"; {(m.MateIs == BoreMate.Pin ? "pin" : "bush")} {mate.AsTyped}" : "")}",
            Measure.Centres m => $"{DimensionWords.Name(m.From)} to {DimensionWords.Name(m.To)}, {Over(m.Over)}: {Typed(m.Values)}",
            Measure.Heights m =>
                $"{string.Join(", ", m.Places.Select(p => $"{DimensionWords.Name(p.Dimension)} {p.Height.AsTyped}"))} above a face at {Typed([.. m.Face.Select(f => f.Height)])}",
            Measure.Straightedge m => $"{DimensionWords.Name(m.Dimension)}, gaps: {string.Join(", ", m.Gaps.Select(Gap))}",
            Measure.Rods m =>
                $"rods in {DimensionWords.Name(m.From)} and {DimensionWords.Name(m.To)}{(m.Near is { } n && m.Far is { } f ? $", {n.AsTyped} and {f.AsTyped} apart" : "")}{(m.FromHeights is { } a && m.ToHeights is { } b ? $", heights {a.First.AsTyped}, {a.Second.AsTyped} and {b.First.AsTyped}, {b.Second.AsTyped}" : "")}",
            Measure.BackToBack m =>
                $"back to back: {string.Join(", ", m.Differences.Select(d => $"{DimensionWords.Name(d.Dimension)} larger by {d.Value.AsTyped}"))}",
            Measure.SpringLoads m =>
                $"lengths: {string.Join(", ", m.Loads.Select(l => $"{l.Length.AsTyped} under {AmountText.Write(l.Load)}"))}",
            Measure.RunOut m => $"{DimensionWords.Name(m.Dimension)}, dial: {Typed(m.Readings)}",
            _ => measure.Id,
        };

    private static string Typed(IReadOnlyList<Length> lengths) => string.Join(", ", lengths.Select(l => l.AsTyped));

    private static string Gap(Gap gap) =>
        gap.Sheets is { } sheets ? $"{(sheets == 1 ? "1 sheet" : $"{sheets} sheets")} at {gap.At.AsTyped}"
        : gap.Stops is { } stops ? $"{gap.Goes.AsTyped} to {stops.AsTyped} at {gap.At.AsTyped}"
        : $"{gap.Goes.AsTyped} at {gap.At.AsTyped}";

    private static string Over(CentresOver over) =>
        over switch
        {
            CentresOver.Inside => "between the edges",
            CentresOver.Outside => "over the edges",
            _ => "centre to centre",
        };
}
