using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>Every feasible reading: lengths between marks, heights, drops again, and each length once more.</summary>
internal sealed class Candidates
{
    private const int MostOfOneLength = 2; // a length read twice and agreeing is not worth a third walk
    private const int MostOfOneHeight = 4;
    private const int MostDrops = 5; // beyond, the tape is the weaker part

    private readonly CarFile _car;
    private readonly List<Candidate> _all = [];

    private Candidates(CarFile car) => _car = car;

    /// <summary>All candidates of a frame whose points are drawn.</summary>
    public static IReadOnlyList<Candidate> Of(CarFile car)
    {
        var candidates = new Candidates(car);
        var points = car.Frame.Points.Where(IsDrawn).ToList();
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = i + 1; j < points.Count; j++)
            {
                candidates.AddLength(points[i], points[j]);
            }

            candidates.AddHeight(points[i]);
            candidates.AddDrop(points[i]);
        }

        return candidates._all;
    }

    private static bool IsDrawn(FramePoint point) => (point.Sketch ?? point.Nominal) is { X: not null, Y: not null };

    private void AddLength(FramePoint from, FramePoint to)
    {
        var taken = _car
            .StandingReadings.OfType<Reading.Plan>()
            .Count(r => (r.From == from.Id && r.To == to.Id) || (r.From == to.Id && r.To == from.Id));
        for (var n = taken; n < MostOfOneLength; n++)
        {
            var reading = new Reading.Plan($"next {from.Id} {to.Id} {n}", from.Id, to.Id, Length.FromMillimetres(1000))
            {
                Tool = ToolOf(ToolKind.Tape),
            };
            _all.Add(new Candidate(n == 0 ? "plan" : "repeat", from.Id, to.Id, null, ProvisionalNetwork.Observed(_car, reading)));
        }
    }

    private void AddHeight(FramePoint point)
    {
        var taken = _car.StandingReadings.OfType<Reading.Height>().Count(r => r.Point == point.Id);
        for (var n = taken; n < MostOfOneHeight; n++)
        {
            var reading = new Reading.Height($"next {point.Id} {n}", point.Id, Length.Zero)
            {
                Tool = ToolOf(ToolKind.Level, ToolKind.Laser),
            };
            _all.Add(new Candidate("height", null, null, point.Id, ProvisionalNetwork.Observed(_car, reading)));
        }
    }

    private void AddDrop(FramePoint point)
    {
        if (point.DropSigma is { } sigma && sigma == Length.Zero)
        {
            return;
        }

        var taken = 1 + _car.StandingReadings.OfType<Reading.Drop>().Count(r => r.Point == point.Id);
        for (var n = taken; n < MostDrops; n++)
        {
            _all.Add(new Candidate("drop", null, null, point.Id, new Observation.DropShift($"next drop {point.Id} {n}", point.Id, 0, 0)));
        }
    }

    /// <summary>The tool of that kind that this car's owner has; the one used most for it.</summary>
    private string? ToolOf(params ToolKind[] kinds) => _car.Tools.FirstOrDefault(t => kinds.Contains(t.Kind))?.Id;
}
