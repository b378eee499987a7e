using Plumbmark.Engine.LeastSquares;

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
    public double? ChiSquareProbability => Redundancy > 0 ? Quantiles.ChiSquareUpper(WeightedSquares, Redundancy) : null;

    /// <summary>How the iteration went.</summary>
    public SolveSummary Summary => State.Summary;

    internal NetworkState State { get; }

    /// <summary>The estimate of a point.</summary>
    /// <exception cref="KeyNotFoundException">No reading touches a point of that name.</exception>
    public PointEstimate Point(string id) => _points[id];

    /// <summary>What the fit says about a reading.</summary>
    /// <exception cref="KeyNotFoundException">There is no reading of that name.</exception>
    public ReadingEstimate Reading(string id) => _readings[id];
}
