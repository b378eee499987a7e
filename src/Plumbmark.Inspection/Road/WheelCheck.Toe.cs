using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

// Toe across a pair and from strings along the car, and the thrust line.
internal sealed partial class WheelCheck
{
    private void AddToe()
    {
        foreach (var axle in Enum.GetValues<Axle>())
        {
            var readings = _readings.OfType<WheelReading.Across>().Where(r => r.Axle == axle).Select(OfAcross).ToList();
            if (HalfTurns.Of(readings) is { } toe)
            {
                Add(
                    axle == Axle.Front ? FigureKind.ToeIn : FigureKind.RearToeIn,
                    null,
                    null,
                    axle,
                    toe.Value,
                    toe.U,
                    toe.Readings,
                    [.. RunOut(toe), .. AtRim(toe.Value)]
                );
            }
        }
    }

    private static HalfTurns.One OfAcross(WheelReading.Across r)
    {
        var diameter = r.Diameter.Metres;
        var value = RimReading.TotalToeIn(r.Behind.Metres - r.Ahead.Metres, diameter);
        return new(r.Id, r.HalfTurn, value, WheelCheckNumbers.Gap(r) * Math.Sqrt(2) / diameter, diameter);
    }

    private IEnumerable<string> AtRim(double totalToe) =>
        _display.ToeAtRim(totalToe) is { } said ? [Texts.Say("road.wheel-check--toe.that-is", said)] : [];

    private void AddStrings()
    {
        var check = StringCheck.Of(_readings, WheelbaseMetres());
        foreach (var wheel in s_wheels)
        {
            if (check.ToeToString(wheel) is { } toe && check.ToeToCentreLine(wheel) is { } toCentre)
            {
                Add(
                    IsFront(wheel) ? FigureKind.ToeIn : FigureKind.RearToeIn,
                    wheel,
                    null,
                    null,
                    toCentre.Value,
                    toCentre.U,
                    toe.Readings,
                    RunOut(toe)
                );
            }
            else if (check.ToeToString(wheel) is not null)
            {
                Remark(Texts.Say("road.wheel-check--toe.the-strings-tell-each-wheels"));
            }
        }

        AddPair(check.TotalToe(WheelPlace.FrontLeft, WheelPlace.FrontRight), FigureKind.ToeIn, Axle.Front);
        AddPair(check.TotalToe(WheelPlace.RearLeft, WheelPlace.RearRight), FigureKind.RearToeIn, Axle.Rear);
        if (check.Thrust() is { } thrust)
        {
            Add(FigureKind.Thrust, null, null, null, thrust.Value, thrust.U, thrust.Readings, []);
        }

        if (!check.StringsMeasured && _readings.OfType<WheelReading.StringGaps>().Any())
        {
            Remark(Texts.Say("road.wheel-check--toe.the-strings-distance-apart-ahead"));
        }
    }

    private void AddPair((double Value, double U, IReadOnlyList<string> Readings)? pair, FigureKind kind, Axle axle)
    {
        if (pair is { } toe)
        {
            Add(kind, null, null, axle, toe.Value, toe.U, toe.Readings, AtRim(toe.Value));
        }
    }
}
