namespace Plumbmark.Engine.Bending;

/// <summary>How far to press next: from under, never past straight.</summary>
/// <param name="TravelMetres">The travel to press, m.</param>
/// <param name="StraightMetres">The travel that would bring the part just straight: middle and 95 % interval, m. The travel asked for is at most its lower end.</param>
/// <param name="SetMetres">The set expected of the travel asked for: middle and 95 % interval, m.</param>
/// <param name="MayGiveNothing">Whether no set at all is about as likely as any: the bite then only tells the spring-back.</param>
public sealed record NextTravel(double TravelMetres, Interval StraightMetres, Interval SetMetres, bool MayGiveNothing)
{
    // Until a set has been seen the spring-back is only the handbook's: go half of the way.
    private const double FirstShare = 0.5;
    private const double SureShare = 0.5;
    private const double ReadingReach = 2; // standard deviations

    /// <summary>The next travel for a part that still has some way to go.</summary>
    /// <param name="belief">What is believed about the spring-back.</param>
    /// <param name="leftMetres">How far the part is still from straight at the ram, m; positive.</param>
    /// <param name="hasSet">Whether any bite so far has left a set that could be seen.</param>
    /// <param name="largestSetMetres">Largest set that one bite may give, m; infinite where nothing limits it.</param>
    public static NextTravel From(BiteBelief belief, double leftMetres, bool hasSet, double largestSetMetres = double.PositiveInfinity)
    {
        ArgumentNullException.ThrowIfNull(belief);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(leftMetres);
        var straight = belief.TravelForSetMetres(leftMetres);
        var travel = straight.Low;
        if (!hasSet)
        {
            // The lower end guards against going past straight; half way guards against a first bite that is large for its own sake.
            travel = Math.Min(travel, belief.TravelForSetMetres(FirstShare * leftMetres).Middle);
        }

        if (belief.LastCameBackMetres is { } cameBack)
        {
            // Spring-back does not shrink as the set grows, so what came back last time plus x sets at most x, whatever else is believed.
            // It keeps the job moving where the theory is far off.
            travel = Math.Max(travel, cameBack + (SureShare * leftMetres) - (ReadingReach * belief.Noise.CameBackMetres));
            straight = straight with
            {
                Low = Math.Max(straight.Low, travel),
                Middle = Math.Max(straight.Middle, travel),
                High = Math.Max(straight.High, travel),
            };
        }

        if (largestSetMetres < leftMetres)
        {
            travel = Math.Min(travel, belief.TravelForSetMetres(largestSetMetres).Low);
        }

        travel = Math.Max(0, travel);
        var set = belief.SetForTravelMetres(travel);
        return new(travel, straight, set, set.Low <= 0 && !hasSet);
    }
}
