using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Bench;

/// <summary>Limits the trade works with where neither the book nor the owner gives one. Each says how well founded it is; most dimensions have none.</summary>
public static class PracticeLimits
{
    private const double Inch = 0.0254;
    private const double Degree = Math.PI / 180;
    private const string FromMemory = "common practice, from memory, no published source";

    /// <summary>The limit of practice for a dimension of a kind of part; null when there is none, and then there is no verdict.</summary>
    public static UsedLimit? For(PartKind kind, DimensionValue value) =>
        (kind, value.Nature, value.Quantity) switch
        {
            (_, DimensionNature.Trueness, Quantity.Angle) => Of(0.5 * Degree, "eyes parallel within half a degree: " + FromMemory),
            (PartKind.LowerWishbone or PartKind.UpperWishbone or PartKind.SpringSeat, DimensionNature.Trueness, Quantity.Length) => Of(
                Inch / 32,
                "arms flat within 1/32 in: common practice, no published source"
            ),
            (PartKind.LowerWishbone or PartKind.UpperWishbone, DimensionNature.Shape, Quantity.Length) when IsHeight(value) => Of(
                Inch / 32,
                "eye heights within 1/32 in: common practice, no published source"
            ),
            (PartKind.Upright, DimensionNature.Shape, Quantity.Angle) => Of(
                0.5 * Degree,
                "renew an upright whose included angle is more than half a degree off: US makers' shop manuals"
            ),
            (PartKind.StubAxle, DimensionNature.Trueness, Quantity.Length) => Of(0.004 * Inch, "run-out up to 0.004 in: " + FromMemory),
            (_, DimensionNature.Clearance, _) => Of(0.010 * Inch, "renew pin or bush above 0.010 in play: " + FromMemory),
            (_, DimensionNature.Grip, _) => Of(0.001 * Inch, "a pressed bush needs at least 0.001 in grip: " + FromMemory),
            (PartKind.CoilSpring, DimensionNature.Spring, Quantity.Length) => Of(
                Inch / 8,
                "free lengths of a pair within 1/8 in: " + FromMemory
            ),
            _ => null,
        };

    private static bool IsHeight(DimensionValue value) => value.Dimension.Contains("height", StringComparison.OrdinalIgnoreCase);

    private static UsedLimit Of(double si, string note) => new(si, LimitSource.Practice, note);
}
