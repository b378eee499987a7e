using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>Puts a plan in walking order: all drops once round the frame, then the lengths from the front, then the heights.</summary>
internal static class PlanWriting
{
    public static MeasuringPlan Of(CarFile car, IReadOnlyList<PlannedReading> chosen, double limitMetres, bool isComplete)
    {
        var points = WalkingOrder(car.Frame.Points);
        var place = points.Select((id, i) => (id, i)).ToDictionary(p => p.id, p => p.i, StringComparer.Ordinal);
        var lengths = chosen.Where(c => c.Candidate.Kind is "plan" or "repeat" or "direct").ToList();
        var heights = chosen.Where(c => c.Candidate.Kind == "height").ToList();
        var drops = chosen.Where(c => c.Candidate.Kind == "drop").ToList();
        var dropped = lengths
            .Where(l => l.Candidate.Kind != "direct")
            .SelectMany(l => l.Candidate.Points)
            .Concat(drops.Select(d => d.Candidate.Point!))
            .Distinct()
            .ToList();
        var perPoint = dropped.ToDictionary(
            id => id,
            id => Has(car, id) + drops.Count(d => d.Candidate.Point == id) + (Has(car, id) == 0 ? 1 : 0),
            StringComparer.Ordinal
        );

        List<NextReading> readings =
        [
            .. dropped
                .Where(id => perPoint[id] > Has(car, id))
                .OrderBy(id => place[id])
                .Select(id => new NextReading("drop", null, null, id, [], 0, PlanWords.Drops(id, perPoint[id] - Has(car, id)))
                {
                    Times = perPoint[id] - Has(car, id),
                }),
            .. lengths
                .OrderBy(l => l.Candidate.Points.Min(p => place[p]))
                .ThenBy(l => l.Candidate.Points.Max(p => place[p]))
                .Select(AsNext),
            .. heights.OrderBy(h => place[h.Candidate.Point!]).Select(AsNext),
        ];
        var plan = new MeasuringPlan(
            readings,
            lengths.Count,
            heights.Count,
            perPoint.Count == 0 ? 0 : perPoint.Values.Max(),
            chosen.Sum(c => c.Minutes),
            limitMetres,
            isComplete,
            ""
        );
        return plan with { Sentence = PlanWords.Whole(plan, LengthWords.For(car)) };
    }

    /// <summary>A planned reading as the answer lists it.</summary>
    public static NextReading AsNext(PlannedReading planned)
    {
        var c = planned.Candidate;
        return new NextReading(c.Kind, c.From, c.To, c.Point, planned.Settles, planned.Minutes, PlanWords.Next(planned));
    }

    /// <summary>Drops of a point already made.</summary>
    private static int Has(CarFile car, string id)
    {
        var standing = car.StandingReadings.ToList();
        var isMarked = standing.Exists(r => r is Reading.Plan or Reading.Offset && r.Points.Contains(id));
        return standing.Count(r => r is Reading.Drop && r.Points.Contains(id)) is var again && (again > 0 || isMarked) ? again + 1 : 0;
    }

    /// <summary>Once round: down the left side from front to rear, and back up the right.</summary>
    private static List<string> WalkingOrder(IReadOnlyList<FramePoint> points)
    {
        double X(FramePoint p) => (p.Sketch?.X ?? p.Nominal?.X)?.Metres ?? 0;
        double Y(FramePoint p) => (p.Sketch?.Y ?? p.Nominal?.Y)?.Metres ?? (p.Id.EndsWith(".R", StringComparison.Ordinal) ? -1 : 1);
        return
        [
            .. points.Where(p => Y(p) >= 0).OrderByDescending(X).Select(p => p.Id),
            .. points.Where(p => Y(p) < 0).OrderBy(X).Select(p => p.Id),
        ];
    }
}
