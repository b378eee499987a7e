namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>The pairs of a frame in the order in which they stand, from one end to the other; pairs side by side are one station.</summary>
/// <remarks>Metres. A pair without a place in plan stands where it is drawn; one that is not drawn either is at no station.</remarks>
internal sealed class Stations
{
    private const double HalfWidthMetres = 0.35; // of a usual frame, where nothing tells it
    private const double SameStationMetres = 0.025; // an upper and a lower mount are one station
    private const double OnCentreLineMetres = 0.1; // nearer the middle than this a point without a partner belongs to neither side

    private readonly MeasuredFrame _frame;
    private readonly Func<int, bool> _has;
    private readonly List<(FramePair Pair, double X)> _stations;
    private readonly bool _isReversed;

    private Stations(MeasuredFrame frame, Func<int, bool> has, List<(FramePair Pair, double X)> stations, bool isReversed) =>
        (_frame, _has, _stations, _isReversed) = (frame, has, stations, isReversed);

    /// <summary>The pairs placed in plan, front first.</summary>
    public static Stations InPlan(MeasuredFrame frame) => Of(frame, frame.HasPlan);

    /// <summary>The pairs with heights, front first.</summary>
    public static Stations InHeight(MeasuredFrame frame) => Of(frame, frame.HasHeight);

    private static Stations Of(MeasuredFrame frame, Func<int, bool> has)
    {
        var stations = new List<(FramePair Pair, double X)>();
        var placed = frame
            .Pairs.Where(p => has(p.Left) && has(p.Right))
            .Select(p => (Pair: p, X: Mean(Along(frame, p.Left), Along(frame, p.Right))))
            .Where(p => p.X is not null)
            .OrderByDescending(p => p.X);
        foreach (var (pair, x) in placed)
        {
            if (stations.Count == 0 || stations[^1].X - x > SameStationMetres)
            {
                stations.Add((pair, x!.Value));
            }
        }

        return new Stations(frame, has, stations, isReversed: false);
    }

    public int Count => _stations.Count;

    /// <summary>The pair that stands for a station.</summary>
    public FramePair Pair(int station) => _stations[station].Pair;

    public string Name(int station) => _stations[station].Pair.Name;

    public double X(int station) => _stations[station].X;

    public double Width(int station) => Math.Max(0.01, YOf(Pair(station).Left) - YOf(Pair(station).Right));

    /// <summary>The same stations from the other end.</summary>
    public Stations Reversed() => new(_frame, _has, [.. _stations.AsEnumerable().Reverse()], !_isReversed);

    /// <summary>All points at the first so many stations and beyond, those without a partner too.</summary>
    public IReadOnlyList<int> PointsOfFirst(int count)
    {
        if (count == Count)
        {
            return [.. Enumerable.Range(0, _frame.Points.Count).Where(p => _has(p) && Along(_frame, p) is not null)];
        }

        var border = (X(count - 1) + X(count)) / 2;
        return
        [
            .. Enumerable
                .Range(0, _frame.Points.Count)
                .Where(p => _has(p) && Along(_frame, p) is { } x && (_isReversed ? x < border : x > border)),
        ];
    }

    /// <summary>1 for a left point, -1 for a right one, 0 for one on the centre line.</summary>
    public double SideOf(int point) =>
        _frame.Pairs.Any(p => p.Left == point) ? 1
        : _frame.Pairs.Any(p => p.Right == point) ? -1
        : Math.Abs(YOf(point)) < OnCentreLineMetres ? 0
        : Math.Sign(YOf(point));

    /// <summary>Where a point stands along the frame: its pair's place, so that a pair moves as one.</summary>
    public double XOf(int point)
    {
        var own = Along(_frame, point) ?? double.NaN;
        var pair = _frame.Pairs.FirstOrDefault(p => p.Left == point || p.Right == point);
        return pair is null ? own : Mean(Along(_frame, pair.Left), Along(_frame, pair.Right)) ?? own;
    }

    public double YOf(int point)
    {
        if (_frame.HasPlan(point))
        {
            return _frame.Y(point);
        }

        var side =
            _frame.Pairs.Any(p => p.Left == point) ? 1
            : _frame.Pairs.Any(p => p.Right == point) ? -1
            : 0;
        return (_frame.Points[point].Nominal?.Y ?? _frame.Points[point].Sketch?.Y)?.Metres ?? side * HalfWidthMetres;
    }

    private static double? Along(MeasuredFrame frame, int point) =>
        frame.HasPlan(point) ? frame.X(point) : (frame.Points[point].Nominal?.X ?? frame.Points[point].Sketch?.X)?.Metres;

    private static double? Mean(double? a, double? b) =>
        a is null ? b
        : b is null ? a
        : (a + b) / 2;
}
