using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Journal;

/// <summary>The road section's part of the fold.</summary>
internal static class RoadFold
{
    public static IEnumerable<Act> ActsOf(RoadSection? road)
    {
        if (road is null)
        {
            yield break;
        }

        yield return new Act.RoadDescribed(road with { Parts = [], Wheels = [] });
        foreach (var part in road.Parts)
        {
            yield return new Act.PartFound(part);
        }

        foreach (var reading in road.Wheels)
        {
            yield return new Act.WheelRead(reading);
        }
    }

    public static RoadSection? After(RoadSection? road, Act act)
    {
        var before = road ?? RoadSection.Empty;
        return act switch
        {
            Act.RoadDescribed a => a.Drawing with { Parts = before.Parts, Wheels = before.Wheels },
            Act.PartFound a when before.Parts.All(p => p.Id != a.Part.Id) => before with { Parts = [.. before.Parts, a.Part] },
            Act.PartTakenBack a => before with
            {
                Parts = [.. before.Parts.Select(p => p.Id == a.Id ? p with { Withdrawn = a.Reason } : p)],
            },
            Act.WheelRead a when before.Wheels.All(w => w.Id != a.Reading.Id) => before with { Wheels = [.. before.Wheels, a.Reading] },
            Act.WheelReadingWithdrawn a => before with
            {
                Wheels = [.. before.Wheels.Select(w => w.Id == a.Id ? w with { Withdrawn = a.Reason } : w)],
            },
            _ => road,
        };
    }
}
