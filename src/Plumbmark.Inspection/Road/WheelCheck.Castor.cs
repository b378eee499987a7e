using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

// Castor and king-pin inclination from a turn each way.
internal sealed partial class WheelCheck
{
    private void AddCastor()
    {
        foreach (var group in _readings.OfType<WheelReading.Swing>().GroupBy(r => r.Wheel).OrderBy(g => g.Key))
        {
            var readings = group.ToList();
            var (castor, u) = Mean(readings, s => s.Exact().CastorRadians);
            var (kingPin, uKingPin) = Mean(readings, s => s.Exact().KingPinRadians);
            var byDegrees = readings.Average(r => SwingOf(r).ByShortForm());
            var ids = readings.Select(r => r.Id).ToList();
            List<string> remarks = [.. ShortForm(Texts.Say("road.wheel-check--castor.camber-difference-over-the-turn"), castor, byDegrees)];
            Add(FigureKind.Castor, group.Key, null, null, castor, u, ids, remarks);
            Add(
                FigureKind.KingPin,
                group.Key,
                null,
                null,
                kingPin,
                uKingPin,
                ids,
                [
                    Texts.Say("road.wheel-check--castor.king-pin-inclination-comes-from"),
                    .. ShortForm(
                        Texts.Say("road.wheel-check--castor.mean-camber-over-one-less"),
                        kingPin,
                        readings.Average(r => SwingOf(r).KingPinByMean())
                    ),
                ]
            );
        }

        AddSplit(FigureKind.Castor, FigureKind.CastorSplit);
    }

    // What the usual short form would say, and what it costs here; nothing when it costs less than half a minute.
    private static IEnumerable<string> ShortForm(string form, double exact, double shortForm)
    {
        if (Math.Abs(shortForm - exact) > HalfMinute)
        {
            yield return Texts.Say(
                "road.wheel-check--castor.the-short-form-would-say",
                form,
                RoadDisplay.Signed(shortForm),
                RoadDisplay.Size(shortForm - exact),
                shortForm < exact ? "low" : "high"
            );
        }
    }

    private const double HalfMinute = 0.5 * Math.PI / 180 / 60;

    private static CastorSwing SwingOf(WheelReading.Swing r) =>
        new(r.Ahead.Radians, r.OutTurn.Radians, r.OutCamber.Radians, r.InTurn.Radians, r.InCamber.Radians);

    private static (double Value, double U) Mean(List<WheelReading.Swing> readings, Func<CastorSwing, double> of)
    {
        var variance = 0.0;
        foreach (var r in readings)
        {
            var (swing, level) = (SwingOf(r), WheelCheckNumbers.Level(r));
            variance += Square(of(swing with { AheadCamberRadians = swing.AheadCamberRadians + level }) - of(swing));
            variance += Square(of(swing with { OutCamberRadians = swing.OutCamberRadians + level }) - of(swing));
            variance += Square(of(swing with { InCamberRadians = swing.InCamberRadians + level }) - of(swing));
            variance += Square(of(swing with { OutTurnRadians = swing.OutTurnRadians + WheelCheckNumbers.TurnRadians }) - of(swing));
            variance += Square(of(swing with { InTurnRadians = swing.InTurnRadians + WheelCheckNumbers.TurnRadians }) - of(swing));
        }

        return (readings.Average(r => of(SwingOf(r))), Math.Sqrt(variance) / readings.Count);
    }
}
