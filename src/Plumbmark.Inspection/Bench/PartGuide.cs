using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>One thing worth measuring on a kind of part at home, and how.</summary>
/// <param name="What">What it is, in a few words.</param>
/// <param name="How">How it is done.</param>
/// <param name="Nature">What sort of dimension it gives.</param>
/// <param name="Quantity">Length, angle or rate.</param>
public sealed record PartGuide(string What, string How, DimensionNature Nature, Quantity Quantity = Quantity.Length)
{
    /// <summary>The same as one sentence.</summary>
    public string Sentence => Texts.Say("bench.part-guide.measure", What, How);

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
        Texts.Say("bench.part-guide.whether-the-eyes-are-parallel"),
        Texts.Say("bench.part-guide.push-a-straight-rod-through"),
        DimensionNature.Trueness,
        Quantity.Angle
    );
    private static readonly PartGuide s_flat = new(
        Texts.Say("bench.part-guide.how-straight-the-flanges-are"),
        Texts.Say("bench.part-guide.lay-a-straightedge-along-them"),
        DimensionNature.Trueness
    );
    private static readonly PartGuide s_heights = new(
        Texts.Say("bench.part-guide.the-heights-of-the-eyes"),
        Texts.Say("bench.part-guide.clamp-the-part-to-a"),
        DimensionNature.Shape
    )
    {
        IsHeight = true,
    };
    private static readonly PartGuide s_reach = new(
        Texts.Say("bench.part-guide.how-long-the-arm-is"),
        Texts.Say("bench.part-guide.from-the-middle-of-its"),
        DimensionNature.Shape
    )
    {
        IsHeight = false,
    };
    private static readonly PartGuide s_bores = new(
        Texts.Say("bench.part-guide.the-bores"),
        Texts.Say("bench.part-guide.two-directions-near-the-mouth"),
        DimensionNature.Diameter
    );
    private static readonly PartGuide s_pair = new(
        Texts.Say("bench.part-guide.the-part-of-the-other"),
        Texts.Say("bench.part-guide.or-bolt-both-back-to"),
        DimensionNature.Shape
    )
    {
        IsOtherWay = true,
    };
    private static readonly PartGuide s_turning = new(
        Texts.Say("bench.part-guide.the-run-out"),
        Texts.Say("bench.part-guide.turn-it-between-centres-or"),
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
                    Texts.Say("bench.part-guide.the-included-angle"),
                    Texts.Say("bench.part-guide.pin-axis-against-stub-axle"),
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
                new(
                    Texts.Say("bench.part-guide.its-play"),
                    Texts.Say("bench.part-guide.hold-a-dial-against-the"),
                    DimensionNature.Trueness
                ),
            ],
            PartKind.SpringSeat or PartKind.Bracket => [s_flat, s_heights],
            PartKind.CoilSpring =>
            [
                new(
                    Texts.Say("bench.part-guide.its-length-under-two-known"),
                    Texts.Say("bench.part-guide.on-a-scale-under-a"),
                    DimensionNature.Spring,
                    Quantity.Rate
                ),
            ],
            PartKind.Trunnion or PartKind.Bush => [s_bores],
            _ => [s_heights, s_bores],
        };
}
