using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>Frames whose lengths were drawn by chance and contradict each other by feet: the Floor has an answer or an explanation for each.</summary>
public static class Contradictions
{
    /// <summary>Asks the Floor about that many; gives each error once, with the smallest file found that shows it.</summary>
    public static IReadOnlyDictionary<string, byte[]> Run(int cars, int seed)
    {
        var random = new Random(seed);
        var findings = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        for (var i = 0; i < cars; i++)
        {
            var car = LongShed.Generated(i, random);
            if (ErrorOf(car) is { } error && !findings.ContainsKey(error))
            {
                findings[error] = CarFileWriter.Write(Smaller(car, error));
            }
        }

        return findings;
    }

    private static CarFile Smaller(CarFile car, string error)
    {
        for (var i = 0; i < car.Readings.Count; )
        {
            var without = car with { Readings = [.. car.Readings.Where((_, n) => n != i)] };
            if (ErrorOf(without) == error)
            {
                car = without;
            }
            else
            {
                i++;
            }
        }

        return car;
    }

    private static string? ErrorOf(CarFile car)
    {
        try
        {
            _ = FloorInspection.Of(car);
            return null;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return $"{e.GetType().Name}: {e.Message} {e.StackTrace?.Split('\n')[0].Trim()}";
        }
    }
}
