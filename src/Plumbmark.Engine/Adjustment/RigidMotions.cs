using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The ways in which all points can move together without any reading noticing: the datum defect, known before anything is solved.</summary>
/// <remarks>
/// A motion is six numbers (t_x, t_y, t_z, ω_x, ω_y, ω_z) about the local origin: δp = t + ω × p. Which combinations leave every reading and
/// every fixed coordinate as it is depends on the kinds of readings and on the fixed places alone; it is found with the free points scattered
/// at random (from a fixed start), where no chance alignment can hide or feign a defect.
/// </remarks>
internal sealed class RigidMotions
{
    private const int Parameters = 6;

    private RigidMotions(double[][] basis, DatumMotion[] names) => (Basis, Names) = (basis, names);

    /// <summary>The free combinations, each six parameters.</summary>
    public double[][] Basis { get; }

    /// <summary>What a person would call them.</summary>
    public DatumMotion[] Names { get; }

    /// <summary>Number of free motions, 0 to 6.</summary>
    public int Count => Basis.Length;

    /// <summary>Finds the free motions of a network.</summary>
    public static RigidMotions Of(CompiledNetwork network)
    {
        var size = Extent(network);
        var x = Scattered(network, size);
        var rows = new LinearRows(network);
        rows.Linearise(x);
        var motions = Enumerable
            .Range(0, Parameters)
            .Where(k => k is not (3 or 4) || CanTilt(network))
            .Select(k => Unit(k, size))
            .ToArray();
        var moved = motions.Select(m => Displacements(network, x, m)).ToArray();
        var effects = motions.Select((m, k) => Effects(network, rows, moved[k])).ToArray();

        // First leave out what moves nothing (a turn of a single point about itself), then what some reading notices.
        var moving = Moving(moved);
        var combined = moving.Select(c => Combine(c, effects)).ToArray();
        var free = Unnoticed(combined).Select(c => Combine(Combine(c, moving), motions)).ToArray();
        return new RigidMotions(free, Name(free, size));
    }

    /// <summary>The displacement of each unknown (n entries, no drop errors) for each free motion at a place.</summary>
    public double[][] Directions(CompiledNetwork network, ReadOnlySpan<double> x)
    {
        var result = new double[Count][];
        for (var k = 0; k < Count; k++)
        {
            result[k] = Displacements(network, x, Basis[k])[..network.UnknownCount];
        }

        return result;
    }

    /// <summary>The same with an entry for each fixed coordinate too (<see cref="Entry"/>).</summary>
    public double[][] Displacements(CompiledNetwork network, double[] x) => [.. Basis.Select(m => Displacements(network, x, m))];

    /// <summary>The displacements of all six rigid motions, free or not.</summary>
    public static double[][] All(CompiledNetwork network, double[] x) =>
        [.. Enumerable.Range(0, Parameters).Select(k => Displacements(network, x, Unit(k, 1)))];

    /// <summary>Where a touched coordinate stands in a displacement: its unknown, or after all unknowns when it is fixed.</summary>
    public static int Entry(CompiledNetwork network, int point, int axis) =>
        network.Points[point].Unknown[axis] >= 0 ? network.Points[point].Unknown[axis] : network.UnknownCount + 3 * point + axis;

    // A plan reading is square to gravity, and a point without a height, or without a place in plan, has nothing to be tilted by: there a tilt
    // is no motion of the whole. Left among the candidates it could stand in for a shift where the points are scattered, and distort them where they are.
    private static bool CanTilt(CompiledNetwork network) =>
        Array.TrueForAll(network.Rows, r => !IsInPlan(r.Kind))
        && Array.TrueForAll(network.Points, p => p.IsTouched[0] == p.IsTouched[2] && p.IsTouched[1] == p.IsTouched[2]);

    private static bool IsInPlan(RowKind kind) =>
        kind
            is RowKind.Plan
                or RowKind.Offset
                or RowKind.MidpointX
                or RowKind.MidpointY
                or RowKind.StepX
                or RowKind.StepY
                or RowKind.BarX
                or RowKind.BarY;

    private static double[] Unit(int parameter, double size)
    {
        var motion = new double[Parameters];
        motion[parameter] = parameter < 3 ? 1 : 1 / size;
        return motion;
    }

    private static double Extent(CompiledNetwork network)
    {
        var size = 0.0;
        foreach (var row in network.Rows)
        {
            size = row.Kind is RowKind.ToolZero or RowKind.ToolScale ? size : Math.Max(size, Math.Abs(row.Value));
        }

        foreach (var point in network.Points)
        {
            size = Math.Max(size, point.Fixed.Max(Math.Abs));
        }

        return size > 0 ? size : 1;
    }

    private static double[] Scattered(CompiledNetwork network, double size)
    {
        // Weyl's sequence on the square root of two: as good as random, and the same everywhere.
        var x = new double[network.UnknownCount];
        foreach (var point in network.Points)
        {
            foreach (var u in point.Unknown.Where(u => u >= 0))
            {
                var t = (u + 1) * Math.Sqrt(2) + (u + 1) * (u + 1) * Math.Sqrt(3);
                x[u] = (t - Math.Floor(t) - 0.5) * 2 * size;
            }
        }

        foreach (var tool in network.Tools)
        {
            if (tool.Scale >= 0)
            {
                x[tool.Scale] = tool.Source.Scale;
            }
        }

        return x;
    }

    // Entries for the unknowns, then three for each point whose touched coordinates are fixed: those must not move either.
    private static double[] Displacements(CompiledNetwork network, ReadOnlySpan<double> x, double[] motion)
    {
        var result = new double[network.UnknownCount + 3 * network.Points.Length];
        for (var i = 0; i < network.Points.Length; i++)
        {
            var point = network.Points[i];
            var (px, py, pz) = (Place(point, 0, x), Place(point, 1, x), Place(point, 2, x));
            Span<double> step =
            [
                motion[0] + motion[4] * pz - motion[5] * py,
                motion[1] + motion[5] * px - motion[3] * pz,
                motion[2] + motion[3] * py - motion[4] * px,
            ];
            for (var axis = 0; axis < 3; axis++)
            {
                if (point.IsTouched[axis])
                {
                    result[Entry(network, i, axis)] = step[axis];
                }
            }
        }

        return result;
    }

    private static double Place(PointSlot point, int axis, ReadOnlySpan<double> x) => point.IsTouched[axis] ? point.Base(axis, x) : 0;

    // Relative change of every reading, then the displacement of the fixed coordinates.
    private static double[] Effects(CompiledNetwork network, LinearRows rows, double[] moved)
    {
        var held = moved.AsSpan(network.UnknownCount);
        var result = new double[network.RowCount + held.Length];
        for (var i = 0; i < network.RowCount; i++)
        {
            var norm = 0.0;
            var columns = network.ColumnsOf(i);
            for (var s = 0; s < columns.Length; s++)
            {
                norm = columns[s] >= 0 && columns[s] < network.FirstToolUnknown ? Math.Max(norm, Math.Abs(rows.DerivativesOf(i)[s])) : norm;
            }

            // A reading from a fixed point shows the motion of its free end only; the fixed end is judged below.
            result[i] = norm > 0 ? rows.Product(i, moved) / norm : 0;
        }

        for (var i = 0; i < held.Length; i++)
        {
            result[network.RowCount + i] = held[i];
        }

        return result;
    }

    // Combinations of motions that move something, scaled to a displacement of unit length.
    private static double[][] Moving(double[][] moved)
    {
        const double NothingMoves = 1e-14; // of squared lengths: 1e-7 of lengths, between rounding (1e-15) and anything real
        var eigen = Gram(moved);
        return
        [
            .. eigen
                .Vectors.Where((_, k) => eigen.Values[k] > NothingMoves * eigen.Values[0])
                .Select((v, k) => v.Select(c => c / Math.Sqrt(eigen.Values[k])).ToArray()),
        ];
    }

    // Combinations of unit displacements that no reading notices.
    private static double[][] Unnoticed(double[][] effects)
    {
        const double RoundingOnly = 1e-14; // squared, as above
        var eigen = Gram(effects);
        return [.. eigen.Vectors.Where((_, k) => eigen.Values[k] <= RoundingOnly)];
    }

    private static SymmetricEigen Gram(double[][] vectors)
    {
        var n = vectors.Length;
        var gram = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                gram[i * n + j] = Dense.Dot(vectors[i], vectors[j]);
            }
        }

        return SymmetricEigen.Of(gram, n);
    }

    private static double[] Combine(double[] coefficients, double[][] vectors)
    {
        var result = new double[vectors.Length > 0 ? vectors[0].Length : 0];
        for (var k = 0; k < coefficients.Length; k++)
        {
            Dense.AddScaled(result, coefficients[k], vectors[k]);
        }

        return result;
    }

    // Elimination with the turns first: a turn about a fixed point is called a turn, whatever shift belongs to it.
    private static DatumMotion[] Name(double[][] free, double size)
    {
        const double Negligible = 1e-6;
        DatumMotion[] order =
        [
            DatumMotion.TurnAboutX,
            DatumMotion.TurnAboutY,
            DatumMotion.TurnAboutZ,
            DatumMotion.ShiftX,
            DatumMotion.ShiftY,
            DatumMotion.ShiftZ,
        ];
        int[] column = [3, 4, 5, 0, 1, 2];
        var rows = free.Select(f => column.Select(c => c < 3 ? f[c] : f[c] * size).ToArray()).ToList();
        var names = new List<DatumMotion>();
        for (var k = 0; k < Parameters && rows.Count > 0; k++)
        {
            var pivot = rows.MaxBy(r => Math.Abs(r[k]))!;
            if (Math.Abs(pivot[k]) <= Negligible)
            {
                continue;
            }

            names.Add(order[k]);
            rows.Remove(pivot);
            foreach (var row in rows)
            {
                Dense.AddScaled(row, -row[k] / pivot[k], pivot);
            }
        }

        return [.. names.Order()];
    }
}
