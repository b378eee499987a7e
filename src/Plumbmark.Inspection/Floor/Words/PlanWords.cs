using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Inspection.Floor;

/// <summary>What to measure next and what it is good for.</summary>
internal static class PlanWords
{
    public static string Next(PlannedReading planned)
    {
        var what = Task(planned.Candidate);
        return planned.Settles.Count == 0
            ? $"{what}."
            : $"{what}: it settles most about {Words.And([.. planned.Settles.Take(4).Select(Subject)])}.";
    }

    /// <summary>A next reading in a few words.</summary>
    public static string Short(NextReading next) =>
        next.Kind switch
        {
            "height" => $"the height of {next.Point}",
            "drop" => $"{next.Point} dropped once more",
            "repeat" => $"{next.From} to {next.To} measured again",
            _ => $"{next.From} to {next.To}",
        };

    public static string Task(Candidate candidate) =>
        candidate.Kind switch
        {
            "height" => $"Take the height of {candidate.Point}",
            "drop" => $"Lift the line off {candidate.Point}, hang it again and mark the floor once more",
            "repeat" => $"Measure {candidate.From} to {candidate.To} once more, without looking at the first value",
            "direct" => $"Set the trammel from {candidate.From} to {candidate.To}, point to point",
            _ => $"Measure {candidate.From} to {candidate.To} on the floor",
        };

    public static string Drops(string point, int drops) =>
        drops == 1 ? $"Drop {point} and mark the floor." : $"Drop {point} {drops} times, lifting the line off between, and mark each.";

    public static string Whole(MeasuringPlan plan, LengthWords words)
    {
        var drops = plan.DropsPerPoint > 1 ? $"up to {plan.DropsPerPoint} drops each" : "one drop each";
        var work =
            $"{Words.Count(plan.Lengths, "length")}, {Words.Count(plan.Heights, "height")}, {drops}, about {RoundedMinutes(plan.Minutes)} minutes";
        var limit = words.Limit(plan.SettlesToMetres);
        return plan.IsComplete
            ? $"{work}; settles everything to {limit}."
            : $"{work}; settles what can be settled to {limit}: with these tools not everything can.";
    }

    /// <summary>That a plan is for some of the points only.</summary>
    public static string LeftAside(int aside, int planned) =>
        $"The plan is for {planned} points spread along the frame, suspension, springs and steering before others; the {aside} others are left aside: drop them too, and measure each to two or three planned points.";

    /// <summary>That on a huge frame not every reading was weighed before one was proposed.</summary>
    public static string NotTried(int left) =>
        FormattableString.Invariant($"The frame is very large: {left:N0} other readings that tell less were not weighed.");

    /// <summary>A check or form in trade words.</summary>
    public static string Subject(string id)
    {
        var at = id.IndexOf(':', StringComparison.Ordinal);
        var (kind, where) = at < 0 ? (id, "") : (id[..at], id[(at + 1)..]);
        return kind switch
        {
            "side-shift" => $"the side shift of {where}",
            "stagger" => $"the fore-and-aft of {where}",
            "height-difference" => $"the height of {where}, left against right",
            "width" => $"the width across {where}",
            "twist" => "twist",
            "sag" => where.Length == 0 ? "sag" : $"sag of the {(where == "L" ? "left" : "right")} rail",
            "deviation-x" or "deviation-y" or "deviation-z" => $"{where} against the book",
            _ => kind,
        };
    }

    private static double RoundedMinutes(double minutes) => Math.Max(5, Math.Round(minutes / 5) * 5);
}
