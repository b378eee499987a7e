using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>How to level a frame, in sentences.</summary>
internal static class LevellingWords
{
    private const double HighPointMetres = 8 * 0.0254; // a tower above the rails, for the example

    public static string TooFew => Texts.Say("floor.levelling.read-the-level-over-three");

    public static string NeverFour => Texts.Say("floor.levelling.never-wind-four-stands-until");

    public static string FloorTooFew => Texts.Say("floor.levelling.three-places-of-the-floor");

    public static string Caution => Texts.Say("floor.levelling.rated-stands-on-firm-concrete");

    public static string Three(IReadOnlyList<string> stands) => Texts.Say("floor.levelling.level-on-three-read-the", Words.And(stands));

    public static string Raise(string stand, double metres, LengthWords words) =>
        metres > 0 ? Texts.Say("floor.levelling.put-under-it", stand, words.Size(metres)) : Texts.Say("floor.levelling.leave-it", stand);

    public static string Fourth(string stand, double offMetres, bool isClear, LengthWords words)
    {
        if (Math.Abs(offMetres) < words.DivisionMetres / 2)
        {
            return Texts.Say("floor.levelling.the-frame-is-in-one", stand);
        }

        var off = $"{words.Size(offMetres)} {(offMetres > 0 ? Texts.Say("floor.levelling.high") : Texts.Say("floor.levelling.low"))}";
        return isClear
            ? Texts.Say("floor.levelling.bring-it-up-until-it", stand, off)
            : Texts.Say("floor.levelling.bring-it-up-until-it-just-touches-and-no", stand, off);
    }

    public static string Floor(double slopeForward, double slopeLeft, LengthWords words)
    {
        var steepest = double.Hypot(slopeForward, slopeLeft);
        if (steepest < 1e-4)
        {
            return Texts.Say("floor.levelling.the-floor-is-level");
        }

        var along = slopeForward < 0 ? Texts.Say("floor.levelling.the-front") : Texts.Say("floor.levelling.the-rear");
        var across = slopeLeft < 0 ? Texts.Say("floor.levelling.the-left") : Texts.Say("floor.levelling.the-right");
        var way =
            Math.Abs(slopeForward) > 3 * Math.Abs(slopeLeft) ? along
            : Math.Abs(slopeLeft) > 3 * Math.Abs(slopeForward) ? across
            : Texts.Say("floor.levelling.and", along, across);
        return Texts.Say(
            "floor.levelling.the-floor-falls-1-in",
            Texts.Number(Math.Round(1 / steepest), "0"),
            way,
            words.Size(steepest * 1.5),
            words.Size(1.5)
        );
    }

    public static string PlumbDisagrees(double slope, LengthWords words) =>
        Texts.Say(
            "floor.levelling.plumb-line-and-level-do",
            Texts.Number(Math.Round(1 / slope), "0"),
            words.Size(HighPointMetres),
            words.Size(slope * HighPointMetres)
        );
}
