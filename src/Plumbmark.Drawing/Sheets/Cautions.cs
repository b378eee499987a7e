namespace Plumbmark.Drawing.Sheets;

/// <summary>What every sheet says about what it is not, and about working safely. The trade's usual cautions, in our words (common practice, no source).</summary>
internal static class Cautions
{
    /// <summary>The line at the foot of every page.</summary>
    public const string Foot = "Compares measurements. Not a certificate of roadworthiness, structure or safety.";

    /// <summary>For a sheet about a frame.</summary>
    public static IReadOnlyList<string> Frame { get; } =
    [
        "This sheet compares measurements. Whether a car is safe or fit for the road is for a qualified inspection to say; the maker's manual comes before this sheet.",
        "Dimensions show shape. They cannot show cracks, thin metal or poor welds: look for those separately, on bare metal.",
        "A limit marked practice or own is not the maker's limit. Where no limit is known, no verdict is given.",
        "Stands must be rated for the load and stand on firm, level ground; nothing of you goes under a frame that only a jack holds. Lift a bare frame with two people.",
        "A bent steering part, upright or stub axle is replaced, not straightened; nothing of the suspension or steering is heated. Welding and straightening a frame may need a qualified person and may touch registration, approval or insurance: ask before you start.",
    ];

    /// <summary>For a sheet that a frame shop works by.</summary>
    public static IReadOnlyList<string> Workshop { get; } =
    [
        "These are wishes from measurements at home, not instructions: the shop's own measuring and judgement come first, and the maker's manual before both.",
        "Before pulling: look for cracks, old welds and thin metal on bare metal. Dimensions cannot show them.",
        "Measure again after each pull, after tacking and after cooling; welding draws a frame.",
        "Bent steering parts, uprights and stub axles are replaced, not straightened; nothing of the suspension or steering is heated. Chains, clamps and jacks under load: stand clear, guard, eye protection.",
    ];

    /// <summary>For a sheet that shows two moments.</summary>
    public static IReadOnlyList<string> BeforeAfter { get; } =
    [
        "This sheet compares measurements at two moments. It is no warranty, and no certificate of roadworthiness, structure or safety.",
        "Both moments should be measured in the same state: bare or laden, on the same supports.",
        "A change that could be noise is not proof that nothing changed: the readings cannot tell.",
        "Repairs to a frame may have to be told to an insurer, an inspector or a buyer; local rules decide.",
    ];

    /// <summary>For a form that is filled in beside the frame.</summary>
    public static IReadOnlyList<string> Form { get; } =
    [
        "Stands rated for the load, on firm level ground, all legs down; try each by hand. Nothing of you under a frame that only a jack holds.",
        "Two people lift a bare frame. Mind your eyes and head at bracket height.",
        "Level the frame on three points, then read the fourth: winding up all four hides a twist.",
    ];

    /// <summary>For a sheet about loose parts.</summary>
    public static IReadOnlyList<string> Parts { get; } =
    [
        "No dimension shows a crack, thinning by rust or a bad weld: look, and have it looked at.",
        "Steering levers, uprights and stub axles that are bent are renewed, never straightened.",
    ];
}
