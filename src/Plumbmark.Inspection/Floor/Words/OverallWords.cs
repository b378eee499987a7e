namespace Plumbmark.Inspection.Floor;

/// <summary>The reasons for the verdict on the frame as a whole.</summary>
internal static class OverallWords
{
    public const string NoLimit =
        "No limit is known, so there are only numbers and no verdict. Enter the book's limit, or choose what the trade uses.";

    public static string AllTrue(int checks) =>
        $"Every suspension, spring and steering check is within its limit ({Words.Count(checks, "check")}), and nothing beyond a limit could hide from these readings.";

    public static string CheckOut(Check check, LengthWords words) =>
        $"{Subject(check)} is {words.Size(check.ValueMetres)} out, sure to {words.SureTo(check.UMetres)}; the limit is {words.Limit(check.LimitMetres!.Value)}.";

    public static string Unsettled(Check check, LengthWords words) =>
        $"{Subject(check)}: {words.Size(check.ValueMetres)}, sure only to {words.SureTo(check.UMetres)}; too close to the limit of {words.Limit(check.LimitMetres!.Value)} to say.";

    private static string Subject(Check check)
    {
        var where = check.Id.IndexOf(':', StringComparison.Ordinal) is >= 0 and var at ? check.Id[(at + 1)..] : "";
        return check.Kind switch
        {
            "sideShift" => $"Side shift of pair {where}",
            "stagger" => $"Stagger of pair {where}, fore and aft,",
            "heightDifference" => $"Height of pair {where}, left against right,",
            "width" => $"Width across pair {where}",
            "twist" => "Twist from rear to front",
            "sag" => $"Sag of the {(where == "L" ? "left" : "right")} rail",
            _ => $"{where} against the book",
        };
    }
}
