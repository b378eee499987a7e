using Plumbmark.Engine.Linkage;

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
            var shortForm = readings.Average(r => SwingOf(r).ByShortForm());
            IReadOnlyList<string> remarks =
                Math.Abs(shortForm - castor) > 0.5 * Math.PI / 180 / 60
                    ?
                    [
                        $"The short form (camber difference over the turn in degrees) would say {RoadDisplay.Signed(shortForm)}: it is two per cent low.",
                    ]
                    : [];
            var ids = readings.Select(r => r.Id).ToList();
            Add(FigureKind.Castor, group.Key, null, null, castor, u, ids, remarks);
            Add(
                FigureKind.KingPin,
                group.Key,
                null,
                null,
                kingPin,
                uKingPin,
                ids,
                ["King-pin inclination comes from the bow of the curve, so it is far less sure than castor."]
            );
        }

        AddSplit(FigureKind.Castor, FigureKind.CastorSplit);
    }

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
