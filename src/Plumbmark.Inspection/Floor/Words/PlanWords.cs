using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>What to measure next and what it is good for.</summary>
internal static class PlanWords
{
    public static string Next(PlannedReading planned)
    {
        var what = Task(planned.Candidate);
        return planned.Settles.Count == 0
            ? $"{what}."
            : Texts.Say("floor.plan.it-settles-most-about", what, Words.And([.. planned.Settles.Select(Subject).Distinct().Take(4)]));
    }

    /// <summary>A next reading in a few words.</summary>
    public static string Short(NextReading next) =>
        next.Kind switch
        {
            "height" => Texts.Say("floor.plan.the-height-of", next.Point),
            "drop" => Texts.Say("floor.plan.dropped-once-more", next.Point),
            "repeat" => Texts.Say("floor.plan.to-measured-again", next.From, next.To),
            _ => Texts.Say("floor.plan.to", next.From, next.To),
        };

    public static string Task(Candidate candidate) =>
        candidate.Kind switch
        {
            "height" => Texts.Say("floor.plan.take-the-height-of", candidate.Point),
            "drop" => Texts.Say("floor.plan.lift-the-line-off-hang", candidate.Point),
            "repeat" => Texts.Say("floor.plan.measure-to-once-more-without", candidate.From, candidate.To),
            "direct" => Texts.Say("floor.plan.set-the-trammel-from-to", candidate.From, candidate.To),
            _ => Texts.Say("floor.plan.measure-to-on-the-floor", candidate.From, candidate.To),
        };

    public static string Drops(string point, int drops) =>
        drops == 1
            ? Texts.Say("floor.plan.drop-and-mark-the-floor", point)
            : Texts.Say("floor.plan.drop-times-lifting-the-line", point, drops);

    public static string Whole(MeasuringPlan plan, LengthWords words)
    {
        var drops =
            plan.DropsPerPoint > 1 ? Texts.Say("floor.plan.up-to-drops-each", plan.DropsPerPoint) : Texts.Say("floor.plan.one-drop-each");
        var work = Texts.Say(
            "floor.plan.about-minutes",
            Texts.Count("floor.plan.lengths", plan.Lengths),
            Texts.Count("floor.plan.heights", plan.Heights),
            drops,
            RoundedMinutes(plan.Minutes)
        );
        var limit = words.Limit(plan.SettlesToMetres);
        return plan.IsComplete
            ? Texts.Say("floor.plan.settles-everything-to", work, limit)
            : Texts.Say("floor.plan.settles-what-can-be-settled", work, limit);
    }

    /// <summary>That a plan is for some of the points only.</summary>
    public static string LeftAside(int aside, int planned) => Texts.Say("floor.plan.the-plan-is-for-points", planned, aside);

    /// <summary>That on a huge frame not every reading was weighed before one was proposed.</summary>
    public static string NotTried(int left) => Texts.Say("floor.plan.the-frame-is-very-large", Texts.Number(left, "N0"));

    /// <summary>A check or form in trade words.</summary>
    public static string Subject(string id)
    {
        var at = id.IndexOf(':', StringComparison.Ordinal);
        var (kind, where) = at < 0 ? (id, "") : (id[..at], id[(at + 1)..]);
        return kind switch
        {
            "side-shift" => Texts.Say("floor.plan.the-side-shift-of", where),
            "stagger" => Texts.Say("floor.plan.the-fore-and-aft-of", where),
            "height-difference" => Texts.Say("floor.plan.the-height-of-left-against", where),
            "width" => Texts.Say("floor.plan.the-width-across", where),
            "twist" => Texts.Say("floor.plan.twist"),
            "sag" => where.Length == 0
                ? Texts.Say("floor.plan.sag")
                : Texts.Say("floor.plan.sag-of-the-rail", where == "L" ? Texts.Say("floor.plan.left") : Texts.Say("floor.plan.right")),
            "deviation-x" or "deviation-y" or "deviation-z" => Texts.Say("floor.plan.against-the-book", where),
            "mash" => Texts.Say("floor.plan.mash"),
            "diamond" => Texts.Say("floor.plan.diamond"),
            "sidesway" => Texts.Say("floor.plan.sidesway"),
            _ => kind,
        };
    }

    private static double RoundedMinutes(double minutes) => Math.Max(5, Math.Round(minutes / 5) * 5);
}
