using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>A network as flat arrays: numbered unknowns, one <see cref="Row"/> for each equation, coordinates about a local origin.</summary>
/// <remarks>
/// The local origin is near the points, so coordinates of millions keep all digits of the readings. Unknowns come point by point (x, y, z,
/// drop error), then tools.
/// </remarks>
internal sealed class CompiledNetwork
{
    /// <summary>Most unknowns one row can touch: an offset with three marks, three drop errors and a scale.</summary>
    public const int Stride = 13;

    public required Network Source { get; init; }

    public required PointSlot[] Points { get; init; }

    public required ToolSlot[] Tools { get; init; }

    public required Row[] Rows { get; init; }

    /// <summary>Columns of each row's derivatives, <see cref="Stride"/> for each row, −1 where nothing is unknown.</summary>
    public required int[] Columns { get; init; }

    /// <summary>Height of the floor under each height row, metres, frozen while an iteration runs.</summary>
    public required double[] FloorMetres { get; init; }

    public required int UnknownCount { get; init; }

    /// <summary>The unknowns of tools begin here and run to the end.</summary>
    public required int FirstToolUnknown { get; init; }

    /// <summary>Local origin, metres.</summary>
    public required double[] Origin { get; init; }

    public int RowCount => Rows.Length;

    /// <summary>The points in an order in which those that share a row stand near each other.</summary>
    public int[] PointOrder => field ??= BandOrder.Of(Neighbours());

    public ReadOnlySpan<int> ColumnsOf(int row) => Columns.AsSpan(row * Stride, Stride);

    /// <summary>Puts the floor under every height row where the point now is; true when a correction moved by more than a nanometre.</summary>
    public bool RefreshFloor(ReadOnlySpan<double> x)
    {
        const double NoticeableMetres = 1e-9;
        var hasMoved = false;
        for (var i = 0; i < Rows.Length; i++)
        {
            if (Rows[i].Kind == RowKind.Height && Source.Observations[Rows[i].Observation] is Observation.Height { Floor: { } floor })
            {
                var point = Points[Rows[i].A];
                var height = floor(point.Base(0, x) + Origin[0], point.Base(1, x) + Origin[1]);
                hasMoved |= Math.Abs(height - FloorMetres[i]) > NoticeableMetres;
                FloorMetres[i] = height;
            }
        }

        return hasMoved;
    }

    private HashSet<int>[] Neighbours()
    {
        var neighbours = new HashSet<int>[Points.Length];
        for (var i = 0; i < neighbours.Length; i++)
        {
            neighbours[i] = [];
        }

        foreach (var row in Rows)
        {
            Join(neighbours, row.A, row.B);
            Join(neighbours, row.A, row.C);
            Join(neighbours, row.B, row.C);
        }

        return neighbours;
    }

    private static void Join(HashSet<int>[] neighbours, int a, int b)
    {
        if (a >= 0 && b >= 0)
        {
            neighbours[a].Add(b);
            neighbours[b].Add(a);
        }
    }
}
