using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor;

/// <summary>Checks in trade words.</summary>
internal static class CheckWords
{
    public static string Subject(Check check)
    {
        var where = check.Id.IndexOf(':', StringComparison.Ordinal) is >= 0 and var at ? check.Id[(at + 1)..] : "";
        return check.Kind switch
        {
            "sideShift" => $"The middle of pair {where}, against the centre line,",
            "stagger" => $"Pair {where}, left against right fore and aft,",
            "heightDifference" => $"The height of pair {where}, left against right,",
            "width" => $"The width across pair {where}",
            "twist" => where.Length == 0 ? "Twist between the end mounts" : "Twist over the whole frame",
            "sag" => where is "L" or "R" ? $"Sag of the {(where == "L" ? "left" : "right")} rail" : "Sag over the whole frame",
            "deviation" => $"{where}, {Direction(check.Id)} against the book,",
            "sidesway" => "Sidesway",
            "diamond" => "Diamond, one rail ahead of the other,",
            "mash" => "The length of one side",
            "point" => $"{where}, all directions together,",
            "pair" => $"One point at least of pair {where}, all directions together,",
            _ => check.Id,
        };
    }

    /// <summary>The limit with whose it is.</summary>
    public static string Limit(Check check, LengthWords words) =>
        check.LimitSource switch
        {
            LimitSource.Factory => $"{words.Limit(check.LimitMetres!.Value)} (the maker's)",
            LimitSource.Practice => $"{words.Limit(check.LimitMetres!.Value)} (the trade's)",
            _ => $"{words.Limit(check.LimitMetres!.Value)} (your own)",
        };

    private static string Direction(string id) =>
        id[id.IndexOf('-', StringComparison.Ordinal) + 1] switch
        {
            'x' => "fore and aft",
            'y' => "sideways",
            _ => "up and down",
        };
}
