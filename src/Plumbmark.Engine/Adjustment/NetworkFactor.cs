using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The factor at the solution: whether the unknowns are determined, and their cofactor matrix.</summary>
/// <remarks>
/// Up to <see cref="QrLimit"/> unknowns by QR with column pivoting. Above that by Cholesky of the normal matrix, which is ten times
/// faster on sparse rows; its smallest relative pivot bounds what squaring the condition has cost, and a small one sends
/// the question back to QR, or, where the network is too large for that, to <see cref="SparseNullSpace"/>. See docs/decisions on the choice of
/// factorisation.
/// </remarks>
internal sealed class NetworkFactor
{
    /// <summary>Unknowns up to which QR is not worth avoiding.</summary>
    private const int QrLimit = 48;

    /// <summary>Unknowns up to which QR is affordable when it is needed: a second or two.</summary>
    private const int LargestQr = 900;

    /// <summary>A direction that the readings see a ten-thousand-millionth as well as the best one is not determined.</summary>
    private const double RankTolerance = 1e-10;

    /// <summary>A relative pivot of Cholesky that leaves at least five digits in the cofactors.</summary>
    private const double SafePivot = 1e-11;

    private NetworkFactor(UnknownOrder order, double[]? inverse, EnvelopeCholesky? cholesky) =>
        (Order, Inverse, Cholesky) = (order, inverse, cholesky);

    public UnknownOrder Order { get; }

    /// <summary>Directions, in positions of <see cref="Order"/>, that no reading determines; empty when all is well.</summary>
    public double[][] NullSpace { get; private init; } = [];

    /// <summary>Positions that depend on the others, as many as <see cref="NullSpace"/> has directions.</summary>
    public int[] Dependent { get; private init; } = [];

    /// <summary>The inverse by positions when QR was used and the rank is full.</summary>
    public double[]? Inverse { get; }

    /// <summary>The factor when Cholesky was used.</summary>
    public EnvelopeCholesky? Cholesky { get; }

    public bool IsFullRank => NullSpace.Length == 0;

    public static NetworkFactor Of(LinearRows rows, UnknownOrder order)
    {
        if (order.Count > QrLimit)
        {
            var normal = new EnvelopeCholesky(order.Envelope(rows.Network));
            NetworkModel.FormNormalEquations(rows, order, normal, new double[order.Count]);
            if (normal.TryFactor(SafePivot))
            {
                return new NetworkFactor(order, null, normal);
            }

            if (order.Count > LargestQr)
            {
                return OfLarge(rows, order);
            }
        }

        var qr = PivotedQr.Of(DenseRows(rows, order), rows.Network.RowCount, order.Count, RankTolerance);
        return qr.Rank == order.Count
            ? new NetworkFactor(order, qr.InverseGram(), null)
            : new NetworkFactor(order, null, null) { NullSpace = qr.NullSpace(), Dependent = qr.ColumnOrder[qr.Rank..].ToArray() };
    }

    private static NetworkFactor OfLarge(LinearRows rows, UnknownOrder order)
    {
        var normal = new EnvelopeCholesky(order.Envelope(rows.Network));
        NetworkModel.FormNormalEquations(rows, order, normal, new double[order.Count]);
        var nullSpace = SparseNullSpace.Of(normal);
        if (nullSpace.Length > 0)
        {
            return new NetworkFactor(order, null, null) { NullSpace = nullSpace, Dependent = Pivots.Of(nullSpace) };
        }

        normal.TryFactor(0);
        return new NetworkFactor(order, null, normal);
    }

    // A direction cosine this small is rounding: scaled up with its column it would pass for a real derivative.
    private static bool IsRounding(in Row row, double weighted) =>
        row.Kind is not (RowKind.ToolScale or RowKind.ToolZero) && Math.Abs(weighted * row.Sigma) < 1e-12;

    private static double[] DenseRows(LinearRows rows, UnknownOrder order)
    {
        var dense = new double[rows.Network.RowCount * order.Count];
        Span<int> positions = stackalloc int[CompiledNetwork.Stride];
        Span<double> values = stackalloc double[CompiledNetwork.Stride];
        for (var row = 0; row < rows.Network.RowCount; row++)
        {
            var count = NetworkModel.Gather(rows, order, row, positions, values);
            for (var i = 0; i < count; i++)
            {
                var isRounding = IsRounding(rows.Network.Rows[row], values[i]);
                dense[row * order.Count + positions[i]] += isRounding ? 0 : values[i];
            }
        }

        return dense;
    }
}
