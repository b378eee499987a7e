using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Doubts;

/// <summary>What to measure again because it is doubted: the one measurement that decides, before anything new is measured.</summary>
internal static class SecondLooks
{
    /// <summary>One for each doubted reading or point, in their order.</summary>
    public static IEnumerable<NextReading> At(CarFile car, IReadOnlyList<Suspect> suspects, FloorOptions options)
    {
        var readings = car.StandingReadings.ToDictionary(r => r.Id, StringComparer.Ordinal);
        return suspects.Select(s =>
            s.Point is { } point
                ? Look("drop", null, null, point, s, options.Minutes.Drop)
                : Again(readings[s.Reading!], s, options.Minutes)
        );
    }

    private static NextReading Again(Reading reading, Suspect suspect, ReadingMinutes minutes) =>
        reading switch
        {
            Reading.Plan r => Look("plan", r.From, r.To, null, suspect, minutes.Plan),
            Reading.Direct r => Look("direct", r.From, r.To, null, suspect, minutes.Direct),
            Reading.Rise r => Look("rise", r.From, r.To, null, suspect, minutes.Height),
            Reading.Offset r => Look("offset", r.From, r.To, r.Point, suspect, minutes.Plan),
            Reading.Height r => Look("height", null, null, r.Point, suspect, minutes.Height),
            _ => Look("drop", null, null, reading.Points.First(), suspect, minutes.Drop),
        };

    private static NextReading Look(string kind, string? from, string? to, string? point, Suspect suspect, double minutes) =>
        new(kind, from, to, point, [$"doubt:{suspect.Reading ?? suspect.Point}"], minutes, suspect.Sentence);
}
