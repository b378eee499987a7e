using Plumbmark.Engine.LeastSquares;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Adjustment;

/// <summary>A fitted network: where the points are, how sure that is, and what the readings say of each other.</summary>
/// <remarks>
/// All uncertainties are standard (k = 1) and a-priori: they follow from the stated sigmas alone, whatever the residuals turned out to be.
/// Textbooks often print a-posteriori values: multiply a standard deviation by <see cref="Sigma0"/>.
/// </remarks>
public sealed class NetworkFit
{
    private readonly Dictionary<string, PointEstimate> _points;
    private readonly Dictionary<string, ReadingEstimate> _readings;

    internal NetworkFit(NetworkState state, FitParts parts)
    {
        State = state;
        Points = parts.Points;
        Readings = parts.Readings;
        Tools = parts.Tools;
        Covariance = parts.Covariance;
        Datum = parts.Datum;
        Redundancy = parts.Redundancy;
        WeightedSquares = state.WeightedSquares;
        _points = Points.ToDictionary(p => p.Id, StringComparer.Ordinal);
        _readings = Readings.ToDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>The points that a reading touches, in network order.</summary>
    public IReadOnlyList<PointEstimate> Points { get; }

    /// <summary>All readings, in network order.</summary>
    public IReadOnlyList<ReadingEstimate> Readings { get; }

    /// <summary>The tools' zero and scale.</summary>
    public IReadOnlyList<ToolEstimate> Tools { get; }

    /// <summary>Covariance of all determined coordinates.</summary>
    public NetworkCovariance Covariance { get; }

    /// <summary>What held the network in place.</summary>
    public DatumReport Datum { get; }

    /// <summary>Equations (readings and priors) less determined unknowns, plus the datum's free motions: how many checks there are.</summary>
    public int Redundancy { get; }

    /// <summary>vᵀPv, the sum of squares of residual over sigma, priors included.</summary>
    public double WeightedSquares { get; }

    /// <summary>vᵀPv / redundancy: near 1 when the sigmas are honest; null without redundancy.</summary>
    public double? VarianceFactor => Redundancy > 0 ? WeightedSquares / Redundancy : null;

    /// <summary>√<see cref="VarianceFactor"/>: the factor from a-priori to a-posteriori standard deviations.</summary>
    public double? Sigma0 => VarianceFactor is { } v ? Math.Sqrt(v) : null;

    /// <summary>
    /// Global test: the chance of a vᵀPv at least this large when all sigmas are right and nothing is wrong (upper tail of χ²); null without redundancy.
    /// </summary>
    public double? ChiSquareProbability => Redundancy > 0 ? ChiSquare.UpperTail(WeightedSquares, Redundancy) : null;

    /// <summary>How the iteration went.</summary>
    public SolveSummary Summary => State.Summary;

    /// <summary>
    /// Groups of readings of which a gross error can be proved but not located: their residuals are perfectly correlated, so every
    /// |w| in a group is the same. With one redundancy that is every checked reading.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<string>> TiedReadings() =>
        [
            .. Adjustment
                .TiedReadings.Of(State)
                .Select(g => g.Select(ReadingId).Distinct(StringComparer.Ordinal).ToList())
                .Where(g => g.Count > 1),
        ];

    /// <summary>How far each coordinate moves for each metre by which a reading is wrong.</summary>
    /// <remarks>
    /// ∂x̂/∂l = Q aᵀ / σ². Times <see cref="ReadingEstimate.MinimalDetectableMetres"/> it is Baarda's external reliability: what an error
    /// that is just not detected would do.
    /// </remarks>
    /// <returns>In the order of <see cref="NetworkCovariance.Coordinates"/>.</returns>
    /// <exception cref="KeyNotFoundException">There is no reading of that name, or it is a repeated drop.</exception>
    public double[] Influence(string readingId) =>
        RowOf(readingId) is { } row ? Covariance.ToCoordinates(State.Influence(row)) : throw new KeyNotFoundException(readingId);

    // Null for a repeated drop: it is pooled before the network and has no row of its own.
    private int? RowOf(string readingId)
    {
        for (var row = 0; row < State.Network.RowCount; row++)
        {
            if (State.Network.Rows[row].Observation >= 0 && ReadingId(row) == readingId)
            {
                return row;
            }
        }

        return null;
    }

    /// <summary>
    /// External reliability of a function of the points: the reading whose undetected error would change it most, and by how much.
    /// Unchecked readings have no limit and are left out; null when no reading is checked. The change is in the function's own unit.
    /// </summary>
    /// <param name="gradient">In the order of <see cref="NetworkCovariance.Coordinates"/>.</param>
    public (string ReadingId, double Change)? WorstUndetected(ReadOnlySpan<double> gradient)
    {
        // f(Q aᵀ) for all rows at once: (Q g) · a.
        var q = State.Cofactor.Times(Covariance.ToState(gradient));
        (string, double)? worst = null;
        for (var row = 0; row < State.Network.RowCount; row++)
        {
            if (State.Network.Rows[row].Observation >= 0 && Reading(ReadingId(row)).MinimalDetectableMetres is { } size)
            {
                var change = Math.Abs(State.Rows.Product(row, q) / State.Network.Rows[row].Sigma * size);
                worst = worst is not { } w || change > w.Item2 ? (ReadingId(row), change) : worst;
            }
        }

        return worst;
    }

    /// <summary>
    /// External reliability of a reading: the point that an error of it, just too small to be detected, would move most, and how far. Null when nothing
    /// checks the reading, for then an error has no limit; null for a repeated drop.
    /// </summary>
    /// <remarks>How far a point moves depends on what holds the network; distances between points do not.</remarks>
    public (string Point, double Metres)? MostMoved(string readingId)
    {
        if (Reading(readingId).MinimalDetectableMetres is not { } size || RowOf(readingId) is not { } row)
        {
            return null;
        }

        var influence = Covariance.ToCoordinates(State.Influence(row));
        (string, double)? most = null;
        foreach (
            var point in Covariance
                .Coordinates.Select((c, i) => (c.Point, Moved: influence[i]))
                .GroupBy(c => c.Point, StringComparer.Ordinal)
        )
        {
            var moved = size * Math.Sqrt(point.Sum(c => c.Moved * c.Moved));
            most = most is not { } m || moved > m.Item2 ? (point.Key, moved) : most;
        }

        return most;
    }

    internal NetworkState State { get; }

    private string ReadingId(int row) => State.Network.Source.Observations[State.Network.Rows[row].Observation].Id;

    /// <summary>The estimate of a point.</summary>
    /// <exception cref="KeyNotFoundException">No reading touches a point of that name.</exception>
    public PointEstimate Point(string id) => _points[id];

    /// <summary>What the fit says about a reading.</summary>
    /// <exception cref="KeyNotFoundException">There is no reading of that name.</exception>
    public ReadingEstimate Reading(string id) => _readings[id];
}
