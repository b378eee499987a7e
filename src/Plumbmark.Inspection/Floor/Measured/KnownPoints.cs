using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>Leaves aside readings of points that have been rubbed out; they stay on record and count again when the point is drawn again.</summary>
internal static class KnownPoints
{
    public static CarFile Only(CarFile car)
    {
        var known = car.Frame.Points.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        return car.Readings.All(r => r.Points.All(known.Contains))
            ? car
            : car with
            {
                Readings = [.. car.Readings.Where(r => r.Points.All(known.Contains))],
            };
    }
}
