using System.Globalization;
using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>What a network leaves open or cannot do, in sentences.</summary>
public static class NetworkWords
{
    /// <summary>One sentence for each group of floating points: what floats and which readings would tie it.</summary>
    public static IReadOnlyList<FloatingGroup> Floating(ConfigurationDefect defect)
    {
        var byName = defect.Floating.ToDictionary(f => f.Point, StringComparer.Ordinal);
        var groups = new List<FloatingGroup>();
        foreach (var group in defect.Groups)
        {
            var members = group.Where(byName.ContainsKey).ToList();
            var ties = defect.Ties.Where(t => Touches(t).Any(group.Contains)).Select(Of).ToList();
            var what = members.TrueForAll(m => !byName[m].InPlan) ? "the height of " : "";
            var verb = members.Count == 1 || what.Length > 0 ? "is" : "are";
            var advice = ties.Count > 0 ? $" To tie {(members.Count == 1 ? "it" : "them")}, measure {List(ties)}." : "";
            groups.Add(
                new FloatingGroup(
                    members,
                    $"Nothing ties {what}{List(members)} to the rest; where {(members.Count == 1 ? "it" : "they")} {verb} stays open.{advice}"
                )
            );
        }

        return groups;
    }

    /// <summary>Readings of which a gross error can be proved but not located.</summary>
    public static string Tied(IReadOnlyList<string> readings, int redundancy)
    {
        const int MostNamed = 8;
        var which = readings.Count <= MostNamed ? List(readings) : $"these {readings.Count} readings";
        var only = redundancy == 1 ? " There is only one check in the whole network." : "";
        return $"A gross error in one of {which} would show, but not in which.{only} One more reading between their points would tell.";
    }

    /// <summary>Why a network cannot be fitted as it stands.</summary>
    public static string Of(NetworkFault fault) =>
        fault.Match(
            _ => "There is no reading yet that places a point.",
            f => $"The name \"{f.Name}\" is used twice.",
            f => $"Reading \"{f.ReadingId}\" goes to \"{f.Point}\", which is not among the points.",
            f => $"Reading \"{f.ReadingId}\" names the tool \"{f.Tool}\", which is not among the tools.",
            f => $"Reading \"{f.ReadingId}\" goes from \"{f.Point}\" to itself.",
            f => $"Reading \"{f.ReadingId}\" has the value {Number(f.ValueMetres * 1000)} mm, which cannot be.",
            f => $"\"{f.Name}\" has the uncertainty {Number(f.Sigma)}; more than zero is needed.",
            f => $"\"{f.Name}\" has a value that is not a number."
        );

    /// <summary>The iteration found no resting place.</summary>
    public static string NotConverged(int steps) =>
        $"The readings contradict each other so far that no figure could be found in {steps} steps. Check the longest readings first.";

    /// <summary>The readings contradict each other, and no slip or two account for it.</summary>
    /// <param name="times">By how much the residuals exceed what the uncertainties allow.</param>
    public static string Unexplained(double times) =>
        $"The readings disagree {times.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)} times as much as their uncertainties allow, and no one or two slips account for it.";

    private static string Of(Tie tie) =>
        tie.Match(
            t => $"the plan length {t.From} to {t.To}",
            t => $"the direct length {t.From} to {t.To}",
            t => $"the height of {t.Point}"
        );

    private static string[] Touches(Tie tie) => tie.Match<string[]>(t => [t.From, t.To], t => [t.From, t.To], t => [t.Point]);

    private static string List(IReadOnlyList<string> items) =>
        items.Count <= 1 ? string.Concat(items) : $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}";

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
