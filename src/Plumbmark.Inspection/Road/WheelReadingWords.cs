using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>A reading of the wheel check in one line, as typed.</summary>
public static class WheelReadingWords
{
    /// <summary>The line.</summary>
    public static string For(WheelReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var half = reading.HalfTurn ? Texts.Say("road.wheel-reading.half-a-turn-on") : "";
        return Of(reading) + half;
    }

    private static string Of(WheelReading reading) =>
        reading switch
        {
            WheelReading.PlumbLine r => Texts.Say(
                "road.wheel-reading.plumb-line-top-bottom-over",
                RoadNames.Of(r.Wheel),
                r.Top.AsTyped,
                r.Bottom.AsTyped,
                r.Span.AsTyped
            ),
            WheelReading.Level r => Texts.Say("road.wheel-reading.camber-by-level", RoadNames.Of(r.Wheel), r.Camber.AsTyped),
            WheelReading.StringGaps r => Texts.Say(
                "road.wheel-reading.string-front-rear-over",
                RoadNames.Of(r.Wheel),
                r.Front.AsTyped,
                r.Rear.AsTyped,
                r.Span.AsTyped,
                Hub(r)
            ),
            WheelReading.Strings r => Texts.Say(
                "road.wheel-reading.strings-apart-ahead-behind-between",
                r.Ahead.AsTyped,
                r.Behind.AsTyped,
                r.Between.AsTyped
            ),
            WheelReading.Across r => Texts.Say(
                "road.wheel-reading.toe-ahead-behind-at",
                r.Axle == Axle.Front ? Texts.Say("road.wheel-reading.front") : Texts.Say("road.wheel-reading.rear"),
                r.Ahead.AsTyped,
                r.Behind.AsTyped,
                r.Diameter.AsTyped,
                r.AtTread ? Texts.Say("road.wheel-reading.on-the-tread") : ""
            ),
            WheelReading.Swing r => Texts.Say(
                "road.wheel-reading.castor-ahead-at-out-at",
                RoadNames.Of(r.Wheel),
                r.Ahead.AsTyped,
                r.OutCamber.AsTyped,
                r.OutTurn.AsTyped,
                r.InCamber.AsTyped,
                r.InTurn.AsTyped
            ),
            WheelReading.RideHeight r => Texts.Say("road.wheel-reading.ride-height", RoadNames.Of(r.Wheel), r.Value.AsTyped),
            WheelReading.Wheelbase r => Texts.Say("road.wheel-reading.wheelbase", RoadNames.Of(r.Side), r.Value.AsTyped),
            WheelReading.Pad r => Texts.Say("road.wheel-reading.pad", RoadNames.Of(r.Wheel), r.Value.AsTyped),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static string Hub(WheelReading.StringGaps reading) =>
        reading.Hub is { } hub ? Texts.Say("road.wheel-reading.hub", hub.AsTyped) : "";
}
