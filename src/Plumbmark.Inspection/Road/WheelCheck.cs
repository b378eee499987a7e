using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>What the readings at the wheels say after assembly: camber, castor, toe, thrust line, wheelbase and ride height, each with its uncertainty and its verdict against the book.</summary>
internal sealed partial class WheelCheck
{
    private static readonly WheelPlace[] s_wheels = Enum.GetValues<WheelPlace>();
    private readonly RoadSection _section;
    private readonly RoadDisplay _display;
    private readonly List<WheelReading> _readings;
    private readonly List<WheelResult> _results = [];
    private readonly List<string> _remarks = [];

    private WheelCheck(RoadSection section, RoadDisplay display)
    {
        (_section, _display) = (section, display);
        _readings = [.. section.Wheels.Where(w => w.Withdrawn is null)];
    }

    /// <summary>The results of a section's readings, with remarks on the check as a whole.</summary>
    public static (IReadOnlyList<WheelResult> Results, IReadOnlyList<string> Remarks) Of(RoadSection section, RoadDisplay display)
    {
        var check = new WheelCheck(section, display);
        check.AddCamber();
        check.AddCastor();
        check.AddToe();
        check.AddStrings();
        check.AddWheelbase();
        check.AddRideHeights();
        return (check._results, check._remarks);
    }

    private double? WheelbaseMetres()
    {
        var read = _readings.OfType<WheelReading.Wheelbase>().Select(r => r.Value.Metres).ToList();
        return read.Count > 0 ? read.Average() : BookLength(FigureKind.Wheelbase);
    }

    private void AddWheelbase()
    {
        var sides = _readings.OfType<WheelReading.Wheelbase>().GroupBy(r => r.Side).ToDictionary(g => g.Key, g => g.ToList());
        foreach (var (side, readings) in sides.OrderBy(s => s.Key))
        {
            var (value, u) = MeanOf([.. readings.Select(r => (r.Value.Metres, r.Sigma?.Metres ?? WheelCheckNumbers.WheelbaseMetres))]);
            Add(FigureKind.Wheelbase, null, side, null, value, u, [.. readings.Select(r => r.Id)], []);
        }

        AddSplit(FigureKind.Wheelbase, FigureKind.WheelbaseSplit);
    }

    private void AddRideHeights()
    {
        var heights = _readings
            .OfType<WheelReading.RideHeight>()
            .GroupBy(r => r.Wheel)
            .ToDictionary(
                g => g.Key,
                g => (Mean: MeanOf([.. g.Select(r => (r.Value.Metres, WheelCheckNumbers.Gap(r)))]), Ids: g.Select(r => r.Id).ToList())
            );
        foreach (
            var (left, right, axle) in new[]
            {
                (WheelPlace.FrontLeft, WheelPlace.FrontRight, Axle.Front),
                (WheelPlace.RearLeft, WheelPlace.RearRight, Axle.Rear),
            }
        )
        {
            if (heights.TryGetValue(left, out var l) && heights.TryGetValue(right, out var r))
            {
                var u = Math.Sqrt(Square(l.Mean.U) + Square(r.Mean.U));
                Add(FigureKind.RideHeightSplit, null, null, axle, l.Mean.Value - r.Mean.Value, u, [.. l.Ids, .. r.Ids], []);
            }
        }
    }

    // What both sides share with opposite sign, of standard uncertainty v, is in u² of each once and in their difference as (2 v)².
    private void AddSplit(FigureKind kind, FigureKind split, double oppositeU = 0)
    {
        bool IsLeft(WheelResult r) => r.Wheel == WheelPlace.FrontLeft || (r.Wheel is null && r.Side == Side.Left);
        bool IsRight(WheelResult r) => r.Wheel == WheelPlace.FrontRight || (r.Wheel is null && r.Side == Side.Right);
        var own = _results.Where(r => r.Kind == kind).ToList();
        if (own.FirstOrDefault(IsLeft) is { } l && own.FirstOrDefault(IsRight) is { } r)
        {
            var u = Math.Sqrt(Square(l.U) + Square(r.U) + (2 * Square(oppositeU)));
            Add(split, null, null, null, l.Value - r.Value, u, [.. l.Readings, .. r.Readings], []);
        }
    }

    private static IReadOnlyList<string> RunOut(HalfTurns angle) =>
        angle.RunOut is { } runOut
            ? [Texts.Say("road.wheel-check.the-rims-own-run-out", RoadDisplay.Size(runOut))]
            : [Texts.Say("road.wheel-check.read-in-one-position-only")];

    private static (double Value, double U) MeanOf(IReadOnlyList<(double Value, double U)> readings) =>
        (readings.Average(r => r.Value), Math.Sqrt(readings.Sum(r => r.U * r.U)) / readings.Count);

    private static bool IsFront(WheelPlace wheel) => wheel is WheelPlace.FrontLeft or WheelPlace.FrontRight;

    private static double Square(double x) => x * x;

    private void Remark(string sentence)
    {
        if (!_remarks.Contains(sentence))
        {
            _remarks.Add(sentence);
        }
    }

    private void Add(
        FigureKind kind,
        WheelPlace? wheel,
        Side? side,
        Axle? axle,
        double value,
        double u,
        IReadOnlyList<string> readings,
        IEnumerable<string> remarks
    )
    {
        // Toe is asked of a pair together, never of one wheel.
        var isOneWheelsToe = kind is FigureKind.ToeIn or FigureKind.RearToeIn && wheel is not null;
        var book = isOneWheelsToe ? null : _section.Book.FirstOrDefault(b => b.Kind == kind);
        var within = RoadFigures.Within(book, value, u);
        _results.Add(
            new(kind, wheel, side, axle, value, u, book, within, within is { } p ? RoadFigures.VerdictOf(p) : null, readings, [.. remarks])
        );
    }
}
