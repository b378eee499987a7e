using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>Limits the trade works with where neither the book nor the owner gives one. Each says how well founded it is; most dimensions have none.</summary>
public static class PracticeLimits
{
    private const double Inch = 0.0254;
    private const double Degree = Math.PI / 180;
    private static string FromMemory => Texts.Say("bench.practice-limits.common-practice-from-memory-no");

    /// <summary>The limit of practice for a dimension of a kind of part; null when there is none, and then there is no verdict.</summary>
    public static UsedLimit? For(PartKind kind, DimensionValue value) =>
        (kind, value.Nature, value.Quantity) switch
        {
            (_, DimensionNature.Trueness, Quantity.Angle) => Of(
                0.5 * Degree,
                Texts.Say("bench.practice-limits.eyes-parallel-within-half-a") + FromMemory
            ),
            (PartKind.LowerWishbone or PartKind.UpperWishbone or PartKind.SpringSeat, DimensionNature.Trueness, Quantity.Length) => Of(
                Inch / 32,
                Texts.Say("bench.practice-limits.arms-flat-within-1-32")
            ),
            (PartKind.LowerWishbone or PartKind.UpperWishbone, DimensionNature.Shape, Quantity.Length) when IsHeight(value) => Of(
                Inch / 32,
                Texts.Say("bench.practice-limits.eye-heights-within-1-32")
            ),
            (PartKind.Upright, DimensionNature.Shape, Quantity.Angle) => Of(
                0.5 * Degree,
                Texts.Say("bench.practice-limits.renew-an-upright-whose-included")
            ),
            (PartKind.StubAxle, DimensionNature.Trueness, Quantity.Length) => Of(
                0.004 * Inch,
                Texts.Say("bench.practice-limits.run-out-up-to-0") + FromMemory
            ),
            (_, DimensionNature.Clearance, _) => Of(0.010 * Inch, Texts.Say("bench.practice-limits.renew-pin-or-bush-above") + FromMemory),
            (_, DimensionNature.Grip, _) => Of(0.001 * Inch, Texts.Say("bench.practice-limits.a-pressed-bush-needs-at") + FromMemory),
            (PartKind.CoilSpring, DimensionNature.Spring, Quantity.Length) => Of(
                Inch / 8,
                Texts.Say("bench.practice-limits.free-lengths-of-a-pair") + FromMemory
            ),
            _ => null,
        };

    private static bool IsHeight(DimensionValue value) => value.Dimension.Contains("height", StringComparison.OrdinalIgnoreCase);

    private static UsedLimit Of(double si, string note) => new(si, LimitSource.Practice, note);
}
