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
        "Steering and suspension parts are not straightened with heat. Welding and straightening a frame may need a qualified person and may touch registration, approval or insurance: ask before you start.",
    ];
}
