using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>Every form of damage at every station and point of a frame that lies along x.</summary>
/// <remarks>
/// Amounts, so that everyone means the same: sidesway - side shift of the outermost station of the damaged end, left positive; diamond -
/// how far the left rail stands ahead of the right; twist - left-minus-right height difference at the front end less the same at the rear;
/// sag - how far the lowest station lies below the line through the ends; mash - shortening of that side; point - its displacement.
/// </remarks>
internal sealed class DamageShapes
{
    private readonly MeasuredFrame _frame;
    private readonly List<DamageShape> _all = [];

    private DamageShapes(MeasuredFrame frame) => _frame = frame;

    /// <summary>All shapes that move a coordinate the readings give.</summary>
    public static IReadOnlyList<DamageShape> Of(MeasuredFrame frame)
    {
        var shapes = new DamageShapes(frame);
        var inPlan = Stations.InPlan(frame);
        var inHeight = Stations.InHeight(frame);
        shapes.AddSidesway(inPlan);
        shapes.AddDiamond(inPlan);
        shapes.AddMash(inPlan);
        shapes.AddTwist(inHeight);
        shapes.AddSag(inHeight);
        shapes.AddPoints();
        shapes.AddLookAlikes();
        return shapes._all;
    }

    private void AddSidesway(Stations stations)
    {
        var n = stations.Count;
        for (var moved = 1; moved < n; moved++)
        {
            foreach (var end in new[] { stations, stations.Reversed() })
            {
                // A step or a hinge divides the frame in two straight parts, and nothing but their number says which is the damaged one.
                var isSmaller = moved < n - moved || (moved == n - moved && end == stations);
                var (outer, hinge) = (end.X(0), end.X(moved));
                double Ramp(int p) => (_frame.X(p) - hinge) / (outer - hinge);
                var from = end.Name(moved - 1);
                var points = end.PointsOfFirst(moved);
                if (isSmaller)
                {
                    Add(DamageForm.Sidesway, from, Move(points, p => (0, 1, 0)), isOneStation: moved == 1);
                    Add(
                        DamageForm.Sidesway,
                        from,
                        Move(points, p => (-_frame.Y(p) / (outer - hinge), Ramp(p), 0)),
                        isOneStation: moved == 1
                    );
                }

                // Two straight parts that meet at a station: either may be the bent one where they are nearly of a size.
                var beyond = n - 1 - moved;
                if (beyond > 0 && 2 * moved <= 3 * beyond)
                {
                    Add(DamageForm.Sidesway, from, Move(points, p => (0, Ramp(p), 0)), isOneStation: moved == 1);
                }
            }
        }
    }

    private void AddDiamond(Stations stations)
    {
        if (stations.Count > 1)
        {
            Add(DamageForm.Diamond, null, Move(stations.PointsOfFirst(stations.Count), p => (stations.SideOf(p) / 2, 0, 0)));
        }
    }

    private void AddMash(Stations stations)
    {
        foreach (var (end, isFront) in new[] { (stations, true), (stations.Reversed(), false) })
        {
            for (var moved = 1; moved < end.Count; moved++)
            {
                foreach (var side in new[] { 1, -1 })
                {
                    var points = end.PointsOfFirst(moved).Where(p => stations.SideOf(p) == side);
                    Add(
                        DamageForm.Mash,
                        end.Name(moved - 1),
                        Move(points, p => (isFront ? -1 : 1, 0, 0)),
                        onlyPositive: true,
                        isOneStation: moved == 1
                    );
                }
            }
        }
    }

    private void AddTwist(Stations stations)
    {
        var n = stations.Count;
        if (n < 2)
        {
            return;
        }

        var (front, rear) = (stations.X(0), stations.X(n - 1));
        double Along(int p) => (stations.XOf(p) - rear) / (front - rear);
        var all = stations.PointsOfFirst(n);

        // A tube turns as a whole, so that a wide station shows more of it than a narrow one; rails that rise by themselves do not.
        Add(DamageForm.Twist, null, Move(all, p => (0, 0, Along(p) * stations.YOf(p) / stations.Width(0))));
        Add(DamageForm.Twist, null, Move(all, p => (0, 0, Along(p) * stations.SideOf(p) / 2)));
        Add(DamageForm.Twist, null, Move(all, p => (0, 0, (Along(p) - 0.5) * stations.SideOf(p) / 2)));
        for (var moved = 1; moved <= n - 2; moved++)
        {
            foreach (var (end, sign) in new[] { (stations, 1), (stations.Reversed(), -1) })
            {
                var (outer, hinge, width) = (end.X(0), end.X(moved), end.Width(0));
                double Share(int p) => sign * (stations.XOf(p) - hinge) / (outer - hinge);
                Add(
                    DamageForm.Twist,
                    end.Name(moved - 1),
                    Move(end.PointsOfFirst(moved), p => (0, 0, Share(p) * stations.YOf(p) / width)),
                    isOneStation: moved == 1
                );
            }
        }
    }

    private void AddSag(Stations stations)
    {
        var n = stations.Count;
        for (var lowest = 1; lowest < n - 1; lowest++)
        {
            var (front, low, rear) = (stations.X(0), stations.X(lowest), stations.X(n - 1));
            double Tent(double x) => x > low ? (front - x) / (front - low) : (x - rear) / (low - rear);
            double Bow(double x) => (front - x) * (x - rear) / ((front - low) * (low - rear));
            var isBowLowest = Enumerable.Range(1, n - 2).All(s => Bow(stations.X(s)) <= 1 + 1e-9);
            foreach (var side in new[] { 0, 1, -1 })
            {
                var points = stations.PointsOfFirst(n).Where(p => side == 0 || stations.SideOf(p) == side).ToList();
                Add(
                    DamageForm.Sag,
                    stations.Name(lowest),
                    Move(points, p => (0, 0, -Tent(stations.XOf(p)))),
                    onlyPositive: true,
                    isSymmetric: side == 0
                );
                if (isBowLowest && n > 3)
                {
                    Add(
                        DamageForm.Sag,
                        stations.Name(lowest),
                        Move(points, p => (0, 0, -Bow(stations.XOf(p)))),
                        onlyPositive: true,
                        isSymmetric: side == 0
                    );
                }
            }
        }
    }

    private void AddPoints()
    {
        for (var p = 0; p < _frame.Points.Count; p++)
        {
            var moves = Enumerable.Range(0, 3).Where(a => _frame.Place(p, a) >= 0).Select(a => Unit(p, a)).ToArray();
            foreach (var move in moves)
            {
                AddPoint(p, [move]);
            }

            if (_frame.HasPlan(p))
            {
                AddPoint(p, [moves[0], moves[1]]);
            }

            if (moves.Length == 3)
            {
                AddPoint(p, moves);
            }
        }
    }

    private void AddLookAlikes()
    {
        var placed = Enumerable.Range(0, _frame.Points.Count).Where(_frame.HasPlan).ToList();

        // A scale is counted on the drawing, not on the measured places: a column made of the damage itself would explain it away.
        var drawn = placed.Where(p => _frame.Points[p].Nominal is { X: not null, Y: not null }).ToList();
        if (drawn.Count > 1)
        {
            Add(
                DamageForm.TapeScale,
                null,
                Move(drawn, p => (_frame.Points[p].Nominal!.X!.Value.Metres, _frame.Points[p].Nominal!.Y!.Value.Metres, 0))
            );
        }

        if (placed.Count > 0 && placed.TrueForAll(_frame.HasHeight))
        {
            var mean = placed.Average(_frame.Z);
            Add(DamageForm.Lean, null, Move(placed, p => (0, HeightOfStation(p) - mean, 0)));
            Add(DamageForm.Lean, null, Move(placed, p => (HeightOfStation(p) - mean, 0, 0)));
        }
    }

    private double HeightOfStation(int point)
    {
        var pair = _frame.Pairs.FirstOrDefault(p => p.Left == point || p.Right == point);
        return pair is not null && _frame.HasHeight(pair.Left) && _frame.HasHeight(pair.Right)
            ? (_frame.Z(pair.Left) + _frame.Z(pair.Right)) / 2
            : _frame.Z(point);
    }

    private double[] Unit(int point, int axis)
    {
        var move = new double[_frame.Values.Length];
        move[_frame.Place(point, axis)] = 1;
        return move;
    }

    private double[] Move(IEnumerable<int> points, Func<int, (double X, double Y, double Z)> by)
    {
        var move = new double[_frame.Values.Length];
        foreach (var p in points)
        {
            var (x, y, z) = by(p);
            foreach (var (axis, size) in new[] { (0, x), (1, y), (2, z) })
            {
                if (_frame.Place(p, axis) is >= 0 and var place)
                {
                    move[place] = size;
                }
            }
        }

        return move;
    }

    private void Add(
        DamageForm form,
        string? from,
        double[] move,
        bool onlyPositive = false,
        bool isSymmetric = false,
        bool isOneStation = false
    ) => _all.Add(new DamageShape(form, from, -1, [move], onlyPositive) { IsSymmetric = isSymmetric, IsOneStation = isOneStation });

    private void AddPoint(int point, double[][] moves) =>
        _all.Add(new DamageShape(DamageForm.Point, _frame.Points[point].Id, point, moves));
}
