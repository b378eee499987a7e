namespace Plumbmark.Inspection.Road;

/// <summary>A reading of the wheel check in one line, as typed.</summary>
public static class WheelReadingWords
{
    /// <summary>The line.</summary>
    public static string For(WheelReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var half = reading.HalfTurn ? ", half a turn on" : "";
        return Of(reading) + half;
    }

    private static string Of(WheelReading reading) =>
        reading switch
        {
            WheelReading.PlumbLine r =>
                $"{RoadNames.Of(r.Wheel)}, plumb line, top {r.Top.AsTyped}, bottom {r.Bottom.AsTyped} over {r.Span.AsTyped}",
            WheelReading.Level r => $"{RoadNames.Of(r.Wheel)}, camber by level, {r.Camber.AsTyped}",
            WheelReading.StringGaps r =>
                $"{RoadNames.Of(r.Wheel)}, string, front {r.Front.AsTyped}, rear {r.Rear.AsTyped} over {r.Span.AsTyped}{Hub(r)}",
            WheelReading.Strings r => $"strings apart {r.Ahead.AsTyped} ahead, {r.Behind.AsTyped} behind, {r.Between.AsTyped} between",
            WheelReading.Across r =>
                $"{(r.Axle == Axle.Front ? "front" : "rear")} toe, {r.Ahead.AsTyped} ahead, {r.Behind.AsTyped} behind at {r.Diameter.AsTyped}{(r.AtTread ? " on the tread" : "")}",
            WheelReading.Swing r =>
                $"{RoadNames.Of(r.Wheel)}, castor, {r.Ahead.AsTyped} ahead, {r.OutCamber.AsTyped} at {r.OutTurn.AsTyped} out, {r.InCamber.AsTyped} at {r.InTurn.AsTyped} in",
            WheelReading.RideHeight r => $"{RoadNames.Of(r.Wheel)}, ride height {r.Value.AsTyped}",
            WheelReading.Wheelbase r => $"{RoadNames.Of(r.Side)} wheelbase {r.Value.AsTyped}",
            WheelReading.Pad r => $"{RoadNames.Of(r.Wheel)}, pad {r.Value.AsTyped}",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static string Hub(WheelReading.StringGaps reading) => reading.Hub is { } hub ? $", hub {hub.AsTyped}" : "";
}
