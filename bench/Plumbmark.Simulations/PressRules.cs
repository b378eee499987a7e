using Plumbmark.Engine.Bending;

namespace Plumbmark.Simulations;

/// <summary>A way to choose the next travel from what was read so far.</summary>
internal delegate double PressRule(PressStory story);

/// <summary>What the person at the press knows: the readings, never the truth.</summary>
internal sealed class PressStory
{
    public required ThreePointBend Handbook { get; init; }

    public required BiteBelief Belief { get; set; }

    public required double Left { get; set; }

    public double SeenSpringBack { get; set; }

    public bool HasSet { get; set; }

    public int Bites { get; set; }
}

/// <summary>The planner and the rules of thumb it is measured against.</summary>
internal static class PressRules
{
    public static readonly (string Name, PressRule Rule)[] All =
    [
        ("planner", story => NextTravel.From(story.Belief, story.Left, story.HasSet).TravelMetres),
        ("e + what is left", story => Elastic(story) + story.Left),
        ("e + half of what is left", story => Elastic(story) + (story.Left / 2)),
    ];

    // Before the first bite e is the handbook's travel at first yield; after each bite it is travel less set.
    private static double Elastic(PressStory story) => story.Bites > 0 ? story.SeenSpringBack : story.Handbook.YieldTravelMetres;
}
