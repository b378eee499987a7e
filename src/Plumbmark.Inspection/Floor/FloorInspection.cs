using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor;

/// <summary>Is this frame true? The one way from a car file to a <see cref="FloorAnswer"/>.</summary>
public static class FloorInspection
{
    /// <summary>What the readings that stand say about the frame so far. Never fails on a readable file: too little is an answer.</summary>
    public static FloorAnswer Of(CarFile car, FloorOptions? options = null)
    {
        _ = options;
        var standing = car.StandingReadings.Count();
        var why = standing == 0 ? "No reading has been taken yet." : "The readings are recorded; they have not been worked out yet.";
        return new FloorAnswer(
            new OverallAnswer(Verdict.CannotTellYet, "Can't tell yet.", [why], []),
            [],
            new AdjustmentSummary(0, null, null),
            [],
            [],
            [],
            [],
            [],
            [],
            [],
            []
        );
    }
}
