using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>Checks in trade words.</summary>
internal static class CheckWords
{
    public static string Subject(Check check)
    {
        var where = check.Id.IndexOf(':', StringComparison.Ordinal) is >= 0 and var at ? check.Id[(at + 1)..] : "";
        return check.Kind switch
        {
            "sideShift" => Texts.Say("floor.check.the-middle-of-pair-against", where),
            "stagger" => Texts.Say("floor.check.pair-left-against-right-fore", where),
            "heightDifference" => Texts.Say("floor.check.the-height-of-pair-left", where),
            "width" => Texts.Say("floor.check.the-width-across-pair", where),
            "twist" => where.Length == 0
                ? Texts.Say("floor.check.twist-between-the-end-mounts")
                : Texts.Say("floor.check.twist-over-the-whole-frame"),
            "sag" => where is "L" or "R"
                ? Texts.Say("floor.check.sag-of-the-rail", where == "L" ? Texts.Say("floor.check.left") : Texts.Say("floor.check.right"))
                : Texts.Say("floor.check.sag-over-the-whole-frame"),
            "deviation" => Texts.Say("floor.check.against-the-book", where, Direction(check.Id)),
            "sidesway" => Texts.Say("floor.check.sidesway"),
            "diamond" => Texts.Say("floor.check.diamond-one-rail-ahead-of"),
            "mash" => Texts.Say("floor.check.the-length-of-one-side"),
            "point" => Texts.Say("floor.check.all-directions-together", where),
            "pair" => Texts.Say("floor.check.one-point-at-least-of", where),
            _ => check.Id,
        };
    }

    /// <summary>The limit with whose it is.</summary>
    public static string Limit(Check check, LengthWords words) =>
        check.LimitSource switch
        {
            LimitSource.Factory => Texts.Say("floor.check.the-makers", words.Limit(check.LimitMetres!.Value)),
            LimitSource.Practice => Texts.Say("floor.check.the-trades", words.Limit(check.LimitMetres!.Value)),
            _ => Texts.Say("floor.check.your-own", words.Limit(check.LimitMetres!.Value)),
        };

    private static string Direction(string id) =>
        id[id.IndexOf('-', StringComparison.Ordinal) + 1] switch
        {
            'x' => Texts.Say("floor.check.fore-and-aft"),
            'y' => Texts.Say("floor.check.sideways"),
            _ => Texts.Say("floor.check.up-and-down"),
        };
}
