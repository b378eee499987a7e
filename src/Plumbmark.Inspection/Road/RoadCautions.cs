namespace Plumbmark.Inspection.Road;

/// <summary>What is said with every answer of the Road, on screen, in print and in JSON.</summary>
public static class RoadCautions
{
    /// <summary>The cautions.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "These figures compare; they certify nothing. Have steering and suspension checked by a competent person before the car is driven.",
        "Final wheel alignment is for a licensed shop where the law says so. The maker's manual comes before anything here.",
        "Limits marked practice are not factory limits.",
        "A bent steering lever, upright, stub axle or track rod is replaced, not straightened, and nothing of the steering or suspension is heated.",
        "Springs store force enough to kill: use proper restraints. Measure with the car on level pads or rated stands, never under a jack.",
    ];
}
