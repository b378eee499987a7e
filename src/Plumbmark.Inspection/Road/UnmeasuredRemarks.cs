using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>Says which places and parts nobody has measured, so that they are taken as drawn.</summary>
internal static class UnmeasuredRemarks
{
    private static readonly string[] s_axes =
    [
        Texts.Say("road.unmeasured-remarks.fore-and-aft"),
        Texts.Say("road.unmeasured-remarks.in-and-out"),
        Texts.Say("road.unmeasured-remarks.in-height"),
    ];

    /// <summary>Adds a sentence for each part of each side that is not measured, or not in every direction.</summary>
    public static void Add(RoadSection section, RoadDeviations deviations, bool hasFront, RearAxle? rear, RoadRemarks remarks)
    {
        foreach (var side in Enum.GetValues<Side>())
        {
            var nothing = new List<string>();
            foreach (var part in Enum.GetValues<CornerPart>().Where(p => IsInPlay(p, section, hasFront, rear)))
            {
                var found = Enumerable
                    .Range(RoadParameters.Of(side, part), RoadParameters.SizeOf(part))
                    .Select(i => deviations.IsFound[i])
                    .ToList();
                if (!found.Contains(true))
                {
                    nothing.Add(RoadNames.Of(part));
                }
                else if (found.Contains(false) && RoadParameters.IsPickUp(part))
                {
                    var open = string.Join(" and ", s_axes.Where((_, axis) => !found[axis]));
                    remarks.Assume(Texts.Say("road.unmeasured-remarks.the-is-not-measured-it", RoadNames.Of(part, side), open));
                }
            }

            if (nothing.Count > 0)
            {
                remarks.Assume(
                    Texts.Say("road.unmeasured-remarks.not-measured-on-the-and", RoadNames.Of(side), string.Join(", ", nothing))
                );
            }
        }
    }

    private static bool IsInPlay(CornerPart part, RoadSection section, bool hasFront, RearAxle? rear) =>
        part switch
        {
            CornerPart.RearEye => rear is not null && section.Rear is not null,
            CornerPart.RearOuter => rear is RearAxle.Trailing,
            _ => hasFront,
        };
}
