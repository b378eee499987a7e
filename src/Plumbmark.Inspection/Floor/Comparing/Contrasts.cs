using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Comparing;

/// <summary>
/// Everything about a measured frame that can be compared: each point with the book where the book has a figure that is not doubted, and each
/// pair side against side where the book does not already say where both are.
/// </summary>
/// <remarks>
/// The frame must lie along x within a few degrees, so that its lie enters linearly: x' = x + x0 - φ y, y' = y + y0 + φ x,
/// z' = z + z0 + nose x + roll y.
/// </remarks>
internal sealed class Contrasts
{
    // Half of a usual frame's width, where nothing tells it: only the share of a tilt between pairs of different width depends on it.
    private const double HalfWidthMetres = 0.35;

    private readonly MeasuredFrame _frame;
    private readonly List<Contrast> _all = [];

    private Contrasts(MeasuredFrame frame) => _frame = frame;

    public IReadOnlyList<Contrast> All => _all;

    /// <summary>The contrasts of a frame that lies along x.</summary>
    public static Contrasts Of(MeasuredFrame frame)
    {
        var contrasts = new Contrasts(frame);
        for (var p = 0; p < frame.Points.Count; p++)
        {
            contrasts.AddBook(p);
        }

        for (var i = 0; i < frame.Pairs.Count; i++)
        {
            contrasts.AddPair(i);
        }

        return contrasts;
    }

    /// <summary>The nuisance columns: what each motion of the frame as a whole adds to every contrast. Motions that only the book can tell are left out without it.</summary>
    public IReadOnlyList<double[]> Lies()
    {
        var motions = new List<int> { 1, 2, 5 };
        if (_all.Exists(c => c.Kind == ContrastKind.BookX))
        {
            motions.Add(0);
        }

        if (_all.Exists(c => c.Kind == ContrastKind.BookZ))
        {
            motions.AddRange([3, 4]);
        }

        return [.. motions.Select(m => _all.Select(c => c.Lie[m]).ToArray())];
    }

    /// <summary>The value of each: measured less expected, metres. What is only drawn is expected to be as it should.</summary>
    public double[] Values() =>
        [
            .. _all.Select(c =>
                c.Terms.Any(t => _frame.IsOnlyDrawn.Count > 0 && _frame.IsOnlyDrawn[t.Coordinate])
                    ? 0
                    : c.Terms.Sum(t => t.Factor * _frame.Values[t.Coordinate]) - c.Expected
            ),
        ];

    /// <summary>What a displacement of the frame's coordinates adds to each.</summary>
    public double[] ChangesBy(double[] displacement) => [.. _all.Select(c => c.ChangeBy(displacement))];

    /// <summary>Their covariance, square metres.</summary>
    public double[,] Covariance()
    {
        var n = _all.Count;
        var covariance = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                covariance[i, j] = covariance[j, i] = _frame.CovarianceOf(_all[i].Terms, _all[j].Terms);
            }
        }

        return covariance;
    }

    private void AddBook(int point)
    {
        double[]?[] lies = _frame.HasPlan(point)
            ?
            [
                [1, 0, -_frame.Y(point), 0, 0, 0],
                [0, 1, _frame.X(point), 0, 0, 0],
                HeightLie(point, 0),
            ]
            : [null, null, HeightLie(point, 0)];
        for (var axis = 0; axis < 3; axis++)
        {
            if (_frame.Place(point, axis) is >= 0 and var place && lies[axis] is { } lie && Book(point, axis) is { } nominal)
            {
                _all.Add(new Contrast(ContrastKind.BookX + axis, point, [new Term(place, 1)], nominal, lie));
            }
        }
    }

    /// <summary>A pair side against side, with what it should be; null when the readings do not give it or nobody knows what it should be.</summary>
    public Contrast? Sides(ContrastKind kind, int index)
    {
        var (_, left, right) = _frame.Pairs[index];
        var axis = AxisOf(kind);
        if (_frame.Place(left, axis) < 0 || _frame.Place(right, axis) < 0 || ExpectedOf(kind, left, right) is not { } expected)
        {
            return null;
        }

        var (ofLeft, ofRight) = kind == ContrastKind.Middle ? (0.5, 0.5) : (1, -1);
        double[] lie = kind switch
        {
            ContrastKind.Middle => [0, 1, (_frame.X(left) + _frame.X(right)) / 2, 0, 0, 0],
            ContrastKind.Stagger => [0, 0, _frame.Y(right) - _frame.Y(left), 0, 0, 0],
            _ => [.. HeightLie(left, HalfWidthMetres).Zip(HeightLie(right, -HalfWidthMetres), (a, b) => a - b)],
        };
        return new Contrast(kind, index, [new(_frame.Place(left, axis), ofLeft), new(_frame.Place(right, axis), ofRight)], expected, lie);
    }

    /// <summary>The distance across a pair against the book; null when the book has not both.</summary>
    public Contrast? Width(int index)
    {
        var (_, left, right) = _frame.Pairs[index];
        return _frame.HasPlan(left) && _frame.HasPlan(right) && Book(left, 1) is { } bookLeft && Book(right, 1) is { } bookRight
            ? new Contrast(
                ContrastKind.Width,
                index,
                [new(_frame.Place(left, 1), 1), new(_frame.Place(right, 1), -1)],
                bookLeft - bookRight,
                new double[Contrast.LieCount]
            )
            : null;
    }

    /// <summary>How far a point lies below the line through two others, less what the book says; null when the book has not all three heights.</summary>
    public Contrast? SagAt(int point, int front, int rear)
    {
        int[] three = [point, front, rear];
        if (three.Any(p => !_frame.HasHeight(p) || Book(p, 2) is null))
        {
            return null;
        }

        var (x, ahead, behind) = (HeightLie(point, 0)[4], HeightLie(front, 0)[4], HeightLie(rear, 0)[4]);
        var share = (x - behind) / (ahead - behind);
        double[] factors = [-1, share, 1 - share];
        return new Contrast(
            ContrastKind.Sag,
            Contrast.NoSubject,
            [.. three.Zip(factors, (p, f) => new Term(_frame.Place(p, 2), f))],
            three.Zip(factors, (p, f) => f * Book(p, 2)!.Value).Sum(),
            [0, 0, 0, 0, 0, three.Zip(factors, (p, f) => f * HeightLie(p, 0)[5]).Sum()]
        );
    }

    /// <summary>How much one contrast differs from another of the same kind.</summary>
    public static Contrast Difference(Contrast a, Contrast b) =>
        new(
            a.Kind,
            Contrast.NoSubject,
            [.. a.Terms, .. b.Terms.Select(t => t with { Factor = -t.Factor })],
            a.Expected - b.Expected,
            [.. a.Lie.Zip(b.Lie, (x, y) => x - y)]
        );

    private void AddPair(int index)
    {
        foreach (var kind in new[] { ContrastKind.Middle, ContrastKind.Stagger, ContrastKind.Level })
        {
            var (_, left, right) = _frame.Pairs[index];
            var isInBook = Book(left, AxisOf(kind)) is not null && Book(right, AxisOf(kind)) is not null;
            if (!isInBook && Sides(kind, index) is { } contrast)
            {
                _all.Add(contrast);
            }
        }
    }

    private static int AxisOf(ContrastKind kind) =>
        kind switch
        {
            ContrastKind.Stagger => 0,
            ContrastKind.Middle => 1,
            _ => 2,
        };

    /// <summary>What the book or the owner says that a pair's contrast should be; zero when neither says anything.</summary>
    private double? ExpectedOf(ContrastKind kind, int leftPoint, int rightPoint)
    {
        var axis = AxisOf(kind);
        if (Book(leftPoint, axis) is { } bookLeft && Book(rightPoint, axis) is { } bookRight)
        {
            return kind == ContrastKind.Middle ? (bookLeft + bookRight) / 2 : bookLeft - bookRight;
        }

        var (left, right) = (_frame.Points[leftPoint], _frame.Points[rightPoint]);
        var (ofLeft, ofRight) = (left.Asymmetry, right.Asymmetry);
        if (ofLeft is null && ofRight is null)
        {
            return 0;
        }

        // Declared on the left: xL = xR + dx, yL = -yR + dy, zL = zR + dz; on the right the same with the sides exchanged.
        double? Difference(Func<Place, Length?> of) => ofLeft is not null ? of(ofLeft)?.Metres : -of(ofRight!)?.Metres;
        return kind switch
        {
            ContrastKind.Middle => (ofLeft ?? ofRight!).Y?.Metres / 2,
            ContrastKind.Stagger => Difference(p => p.X),
            _ => Difference(p => p.Z),
        };
    }

    private double? Book(int point, int axis)
    {
        var of = _frame.Points[point];
        if (of.Nominal is not { } nominal || of.NominalDoubt is not null)
        {
            return null;
        }

        return (
            axis switch
            {
                0 => nominal.X,
                1 => nominal.Y,
                _ => nominal.Z,
            }
        )?.Metres;
    }

    /// <summary>How the frame's lie moves a height; a point without a place in plan is taken where it is drawn, near enough for a small tilt.</summary>
    private double[] HeightLie(int point, double sideMetres)
    {
        var of = _frame.Points[point];
        var x = _frame.HasPlan(point) ? _frame.X(point) : (of.Nominal?.X ?? of.Sketch?.X)?.Metres ?? 0;
        var y = _frame.HasPlan(point) ? _frame.Y(point) : (of.Nominal?.Y ?? of.Sketch?.Y)?.Metres ?? sideMetres;
        return [0, 0, 0, 1, x, y];
    }
}
