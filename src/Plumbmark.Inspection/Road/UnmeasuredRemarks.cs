namespace Plumbmark.Inspection.Road;

/// <summary>Says which places and parts nobody has measured, so that they are taken as drawn.</summary>
internal static class UnmeasuredRemarks
{
    private static readonly string[] s_axes = ["fore and aft", "in and out", "in height"];

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
                    remarks.Assume($"The {RoadNames.Of(part, side)} is not measured {open}; it is taken as drawn there.");
                }
            }

            if (nothing.Count > 0)
            {
                remarks.Assume($"Not measured on the {RoadNames.Of(side)} and taken as drawn: {string.Join(", ", nothing)}.");
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
