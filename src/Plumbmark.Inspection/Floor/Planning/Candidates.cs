using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>Every feasible reading: lengths between marks, heights, drops again, and each length once more.</summary>
internal sealed class Candidates
{
    private const int MostOfOneLength = 2; // a length read twice and agreeing is not worth a third walk
    private const int MostOfOneHeight = 4;
    private const int MostPointsForAllLengths = 32;
    private const int MostDrops = 5; // beyond, the tape is the weaker part

    private readonly CarFile _car;
    private readonly List<Candidate> _all = [];

    private readonly FrameNetwork _network;

    private Candidates(CarFile car, FrameNetwork network) => (_car, _network) = (car, network);

    /// <summary>All candidates of a frame whose points are drawn.</summary>
    public static IReadOnlyList<Candidate> Of(CarFile car, FrameNetwork network)
    {
        var candidates = new Candidates(car, network);
        var points = car.Frame.Points.Where(IsDrawn).ToList();
        var all = Enumerable.Range(0, points.Count).ToList();
        for (var i = 0; i < points.Count; i++)
        {
            // On a large frame only lengths to a point that matters: those between two others settle next to nothing.
            foreach (var j in all.Skip(i + 1).Where(j => points.Count <= MostPointsForAllLengths || Roles.MustBeTrue(points, i, j)))
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
        if (from.CannotDrop || to.CannotDrop)
        {
            AddTrammel(from, to);
            return;
        }

        var tool = ToolOf(ToolKind.Tape);
        for (var n = taken; n < MostOfOneLength; n++)
        {
            var sigma = SigmaMetres(tool, isBetweenMarks: true);
            var observation = new Observation.PlanDistance($"next {from.Id} {to.Id} {n}", from.Id, to.Id, 1, sigma, SharedTape(tool));
            _all.Add(new Candidate(n == 0 ? "plan" : "repeat", from.Id, to.Id, null, observation));
        }
    }

    /// <summary>A point without a mark on the floor is reached in the air: from the points themselves, with the heights of both.</summary>
    private void AddTrammel(FramePoint from, FramePoint to)
    {
        var taken = _car
            .StandingReadings.OfType<Reading.Direct>()
            .Count(r => (r.From == from.Id && r.To == to.Id) || (r.From == to.Id && r.To == from.Id));
        var tool = ToolOf(ToolKind.Trammel) ?? ToolOf(ToolKind.Tape);
        for (var n = taken; n < MostOfOneLength; n++)
        {
            var sigma = SigmaMetres(tool, isBetweenMarks: true);
            var observation = new Observation.DirectDistance($"next in the air {from.Id} {to.Id} {n}", from.Id, to.Id, 1, sigma);
            _all.Add(new Candidate("direct", from.Id, to.Id, null, observation));
        }
    }

    /// <summary>The tape whose zero and scale a length shares.</summary>
    private static string? SharedTape(Tool? tool) =>
        ToolHabits.Shared(tool?.Id ?? ToolHabits.UnnamedTape, tool) is { } shared ? shared.Id : null;

    /// <summary>The tools that candidates share, so that a design knows them before they are first used.</summary>
    public static IEnumerable<NetworkTool> Tools(CarFile car)
    {
        var tape = car.Tools.FirstOrDefault(t => t.Kind == ToolKind.Tape);
        return ToolHabits.Shared(tape?.Id ?? ToolHabits.UnnamedTape, tape) is { } shared ? [shared] : [];
    }

    /// <summary>How sure one more reading would be: as its owner says, as the tool's readings so far show, else as usual.</summary>
    private double SigmaMetres(Tool? tool, bool isBetweenMarks) =>
        tool?.Sigma?.Metres
        ?? _network.Spreads.FirstOrDefault(s => s.Tool == tool?.Id && s.IsBetweenMarks == isBetweenMarks)?.Used.StandardDeviation
        ?? ToolHabits.Reading(_car, tool, isBetweenMarks).StandardUncertaintyMetres;

    private void AddHeight(FramePoint point)
    {
        var taken = _car.StandingReadings.OfType<Reading.Height>().Count(r => r.Point == point.Id);
        for (var n = taken; n < MostOfOneHeight; n++)
        {
            var sigma = SigmaMetres(ToolOf(ToolKind.Level, ToolKind.Laser), isBetweenMarks: false);
            var observation = new Observation.Height($"next {point.Id} {n}", point.Id, 0, sigma);
            _all.Add(new Candidate("height", null, null, point.Id, observation));
        }
    }

    private void AddDrop(FramePoint point)
    {
        if (point.CannotDrop || (point.DropSigma is { } sigma && sigma == Length.Zero))
        {
            return;
        }

        var taken = 1 + _car.StandingReadings.OfType<Reading.Drop>().Count(r => r.Point == point.Id);
        for (var n = taken; n < MostDrops; n++)
        {
            _all.Add(new Candidate("drop", null, null, point.Id, new Observation.DropShift($"next drop {point.Id} {n}", point.Id, 0, 0)));
        }
    }

    /// <summary>The first tool of that kind that this car's owner has.</summary>
    private Tool? ToolOf(params ToolKind[] kinds) => _car.Tools.FirstOrDefault(t => kinds.Contains(t.Kind));
}
