namespace Plumbmark.Inspection.Bench;

/// <summary>One thing worth measuring on a kind of part at home, and how.</summary>
/// <param name="What">What it is, in a few words.</param>
/// <param name="How">How it is done.</param>
/// <param name="Nature">What sort of dimension it gives.</param>
/// <param name="Quantity">Length, angle or rate.</param>
public sealed record PartGuide(string What, string How, DimensionNature Nature, Quantity Quantity = Quantity.Length)
{
    /// <summary>The same as one sentence.</summary>
    public string Sentence => $"Measure {What}: {How}.";

    /// <summary>Whether it is a height over the clamped face (true), a length in the part's own plane (false), or either (null).</summary>
    public bool? IsHeight { get; init; }

    /// <summary>Whether it is only another way to what its neighbours tell.</summary>
    public bool IsOtherWay { get; init; }

    /// <summary>Whether a part of its kind is not called straight without it, unless the book says what else will do.</summary>
    public bool IsWanted => !IsOtherWay && (Nature is DimensionNature.Shape or DimensionNature.Trueness);

    /// <summary>Whether a dimension is of this sort.</summary>
    /// <param name="value">The dimension.</param>
    /// <param name="isHeight">Whether it is a height over the clamped face.</param>
    public bool IsSettledBy(DimensionValue value, bool isHeight)
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.Nature == Nature && value.Quantity == Quantity && (IsHeight ?? isHeight) == isHeight;
    }

    private static readonly PartGuide s_rods = new(
        "whether the eyes are parallel",
        "push a straight rod through each eye; measure their distance on both sides, and the height of each rod's ends",
        DimensionNature.Trueness,
        Quantity.Angle
    );
    private static readonly PartGuide s_flat = new(
        "how straight the flanges are",
        "lay a straightedge along them and feel the gap every inch; a sheet of office paper is about 0.10 mm",
        DimensionNature.Trueness
    );
    private static readonly PartGuide s_heights = new(
        "the heights of the eyes",
        "clamp the part to a flat surface, take three heights on the clamped face and one on each place that matters",
        DimensionNature.Shape
    )
    {
        IsHeight = true,
    };
    private static readonly PartGuide s_reach = new(
        "how long the arm is",
        "from the middle of its eye to its bolt holes",
        DimensionNature.Shape
    )
    {
        IsHeight = false,
    };
    private static readonly PartGuide s_bores = new(
        "the bores",
        "two directions near the mouth and two deep inside, and the pin or bush that goes in",
        DimensionNature.Diameter
    );
    private static readonly PartGuide s_pair = new(
        "the part of the other side in the same places",
        "or bolt both back to back on one rod and measure what stands apart",
        DimensionNature.Shape
    )
    {
        IsOtherWay = true,
    };
    private static readonly PartGuide s_turning = new(
        "the run-out",
        "turn it between centres or in V-blocks under a dial",
        DimensionNature.Trueness
    );

    /// <summary>What is worth measuring, most telling first.</summary>
    public static IReadOnlyList<PartGuide> For(PartKind kind) =>
        kind switch
        {
            PartKind.LowerWishbone or PartKind.UpperWishbone => [s_rods, s_flat, s_heights, s_bores],
            PartKind.Upright =>
            [
                new(
                    "the included angle",
                    "pin axis against stub axle, with a digital level on a rod in each",
                    DimensionNature.Shape,
                    Quantity.Angle
                ),
                s_bores,
            ],
            PartKind.StubAxle => [s_turning],
            PartKind.SteeringLever => [s_heights, s_reach, s_pair, s_bores],
            PartKind.FulcrumPin or PartKind.TrackRod => [s_turning],
            PartKind.BallJoint =>
            [
                new("its play", "hold a dial against the pin, push and pull it by hand, and note both ends", DimensionNature.Trueness),
            ],
            PartKind.SpringSeat or PartKind.Bracket => [s_flat, s_heights],
            PartKind.CoilSpring =>
            [
                new(
                    "its length under two known loads",
                    "on a scale under a plate, in a guard and never with hands between the coils",
                    DimensionNature.Spring,
                    Quantity.Rate
                ),
            ],
            PartKind.Trunnion or PartKind.Bush => [s_bores],
            _ => [s_heights, s_bores],
        };
}
