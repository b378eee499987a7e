namespace Plumbmark.Engine.Bending;

/// <summary>The unhardened rectangular bar on two supports with the load in the middle, in closed form.</summary>
/// <remarks>
/// W. Prager and P. G. Hodge, Theory of Perfectly Plastic Solids (1951), ch. 2 (from memory):
/// δ/δ_Y = [5 − (3 + f)·√(3 − 2f)] / f², f = F/F_Y from 1 to the collapse at 1.5, where δ/δ_Y = 20/9.
/// </remarks>
public static class CentreLoadedRectangle
{
    /// <summary>F / F_Y at which the bar folds.</summary>
    public const double CollapseRatio = 1.5;

    /// <summary>Travel over travel at first yield, for a load over the load at first yield of 0 to 1.5.</summary>
    public static double TravelRatio(double loadRatio)
    {
        if (!(loadRatio is >= 0 and <= CollapseRatio))
        {
            throw new ArgumentOutOfRangeException(nameof(loadRatio), loadRatio, "Between 0 and the collapse at 1.5.");
        }

        return loadRatio <= 1 ? loadRatio : (5 - ((3 + loadRatio) * Math.Sqrt(3 - (2 * loadRatio)))) / (loadRatio * loadRatio);
    }

    /// <summary>Set over travel at first yield: what stays when the load is taken off again.</summary>
    public static double SetRatio(double loadRatio) => TravelRatio(loadRatio) - loadRatio;

    /// <summary>Half the length of the yielded zone over the span, a ratio.</summary>
    public static double YieldedHalfLengthOverSpan(double loadRatio) => loadRatio <= 1 ? 0 : (1 - (1 / loadRatio)) / 2;
}
