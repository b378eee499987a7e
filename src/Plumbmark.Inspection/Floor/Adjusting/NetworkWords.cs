using System.Globalization;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Language;

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
            var what = members.TrueForAll(m => !byName[m].InPlan) ? Texts.Say("floor.network.the-height-of") : "";
            var verb = members.Count == 1 || what.Length > 0 ? "is" : "are";
            var advice = ties.Count > 0 ? Texts.Say("floor.network.to-tie-measure", members.Count == 1 ? "it" : "them", List(ties)) : "";
            groups.Add(
                new FloatingGroup(
                    members,
                    Texts.Say(
                        "floor.network.nothing-ties-to-the-rest",
                        what,
                        List(members),
                        members.Count == 1 ? "it" : "they",
                        verb,
                        advice
                    )
                )
            );
        }

        return groups;
    }

    /// <summary>Readings of which a gross error can be proved but not located.</summary>
    public static string Tied(IReadOnlyList<string> readings, int redundancy)
    {
        const int MostNamed = 8;
        var which = readings.Count <= MostNamed ? List(readings) : Texts.Say("floor.network.these-readings", readings.Count);
        var only = redundancy == 1 ? Texts.Say("floor.network.there-is-only-one-check") : "";
        return Texts.Say("floor.network.a-gross-error-in-one", which, only);
    }

    /// <summary>Why a network cannot be fitted as it stands.</summary>
    public static string Of(NetworkFault fault) =>
        fault.Match(
            _ => Texts.Say("floor.network.there-is-no-reading-yet"),
            f => Texts.Say("floor.network.the-name-is-used-twice", f.Name),
            f => Texts.Say("floor.network.reading-goes-to-which-is", f.ReadingId, f.Point),
            f => Texts.Say("floor.network.reading-names-the-tool-which", f.ReadingId, f.Tool),
            f => Texts.Say("floor.network.reading-goes-from-to-itself", f.ReadingId, f.Point),
            f => Texts.Say("floor.network.reading-has-the-value-mm", f.ReadingId, Number(f.ValueMetres * 1000)),
            f => Texts.Say("floor.network.has-the-uncertainty-more-than", f.Name, Number(f.Sigma)),
            f => Texts.Say("floor.network.has-a-value-that-is", f.Name)
        );

    /// <summary>The iteration found no resting place.</summary>
    public static string NotConverged(int steps) => Texts.Say("floor.network.the-readings-contradict-each-other", steps);

    /// <summary>The readings contradict each other, and no slip or two account for it.</summary>
    /// <param name="times">By how much the residuals exceed what the uncertainties allow.</param>
    public static string Unexplained(double times) =>
        Texts.Say("floor.network.the-readings-disagree-times-as", times.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture));

    private static string Of(Tie tie) =>
        tie.Match(
            t => Texts.Say("floor.network.the-plan-length-to", t.From, t.To),
            t => Texts.Say("floor.network.the-direct-length-to", t.From, t.To),
            t => Texts.Say("floor.network.the-height-of-2", t.Point)
        );

    private static string[] Touches(Tie tie) => tie.Match<string[]>(t => [t.From, t.To], t => [t.From, t.To], t => [t.Point]);

    private static string List(IReadOnlyList<string> items) =>
        items.Count <= 1 ? string.Concat(items) : Texts.Say("floor.network.and", string.Join(", ", items.Take(items.Count - 1)), items[^1]);

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
