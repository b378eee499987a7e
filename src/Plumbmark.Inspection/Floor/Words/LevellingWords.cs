namespace Plumbmark.Inspection.Floor;

/// <summary>How to level a frame, in sentences.</summary>
internal static class LevellingWords
{
    private const double HighPointMetres = 8 * 0.0254; // a tower above the rails, for the example

    public const string TooFew = "Read the level over three stands at least: two at the rear and one in the middle of the front.";

    public const string NeverFour =
        "Never wind four stands until all agree: a bare frame bends on them and hides its own twist. A stand that turns by hand is the sign.";

    public const string FloorTooFew =
        "Three places of the floor that are not on one line are needed before the floor can be taken out of heights.";

    public const string Caution =
        "Rated stands on firm concrete, all legs down; rock it before you trust it, two people for a lift, nobody under it, and never on a jack alone.";

    public static string Three(IReadOnlyList<string> stands) =>
        $"Level on three: {Words.And(stands)}. Read the level again after each change.";

    public static string Raise(string stand, double metres, LengthWords words) =>
        metres > 0 ? $"{stand}: put {words.Size(metres)} under it." : $"{stand}: leave it.";

    public static string Fourth(string stand, double offMetres, bool isClear, LengthWords words)
    {
        if (Math.Abs(offMetres) < words.DivisionMetres / 2)
        {
            return $"{stand}: the frame is in one plane over all four; bring the stand up until it just touches.";
        }

        var off = $"{words.Size(offMetres)} {(offMetres > 0 ? "high" : "low")}";
        return isClear
            ? $"{stand}: bring it up until it just touches and no further. The frame is {off} there against the other three: that is twist."
            : $"{stand}: bring it up until it just touches and no further. The frame reads {off} there against the other three; the level alone may do that much.";
    }

    public static string Floor(double slopeForward, double slopeLeft, LengthWords words)
    {
        var steepest = double.Hypot(slopeForward, slopeLeft);
        if (steepest < 1e-4)
        {
            return "The floor is level.";
        }

        var along = slopeForward < 0 ? "the front" : "the rear";
        var across = slopeLeft < 0 ? "the left" : "the right";
        var way =
            Math.Abs(slopeForward) > 3 * Math.Abs(slopeLeft) ? along
            : Math.Abs(slopeLeft) > 3 * Math.Abs(slopeForward) ? across
            : $"{along} and {across}";
        return $"The floor falls 1 in {Math.Round(1 / steepest):0} toward {way}: {words.Size(steepest * 1.5)} over {words.Size(1.5)}. Heights above the floor have it taken out.";
    }

    public static string PlumbDisagrees(double slope, LengthWords words) =>
        $"Plumb line and level do not agree: 1 in {Math.Round(1 / slope):0}. Turn the level end for end and try again; as it is, a point {words.Size(HighPointMetres)} above the rails lands {words.Size(slope * HighPointMetres)} off and every tower seems to lean the same way.";
}
