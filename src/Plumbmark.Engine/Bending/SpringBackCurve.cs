using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Bending;

/// <summary>One possible curve of spring-back against total set, with the logarithm of its weight.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct SpringBackCurve(double YieldTravel, double Give, int Hardening, double Early, double Fade, double LogWeight)
{
    /// <summary>The spring-back of a bite that ends with a total set, m.</summary>
    public double SpringBack(SpringBackTable table, double totalSet)
    {
        var near = 0;
        return SpringBack(table, totalSet, ref near);
    }

    private double SpringBack(SpringBackTable table, double totalSet, ref int near)
    {
        var s = Math.Max(0, totalSet) / YieldTravel;
        var early = Early > 0 ? 1 - (Early * Math.Exp(-s / Fade)) : 1;
        return (1 + Give) * YieldTravel * table.SpringBackRatio(Hardening, s, ref near) * early;
    }

    /// <summary>The set a travel leaves after an earlier total set: the root of travel = set + spring-back, m.</summary>
    /// <param name="table">The theory.</param>
    /// <param name="travel">Travel, m.</param>
    /// <param name="setBefore">Total set before, m.</param>
    /// <param name="tolerance">Largest error of the set, over the travel.</param>
    /// <remarks>
    /// False position in its Illinois form, halving now and then. The spring-back does not fall as the set grows, so that the set is off by no more than the travel is.
    /// </remarks>
    public double SetFor(SpringBackTable table, double travel, double setBefore, double tolerance)
    {
        const int MostSteps = 60;
        var near = 0;
        var back = SpringBack(table, setBefore, ref near);
        if (back >= travel)
        {
            return 0;
        }

        // What came back of the earlier set bounds the set from above, what would come back of that bounds it from below.
        var close = tolerance * travel;
        var high = travel - back;
        var fHigh = SpringBack(table, setBefore + high, ref near) - back;
        var low = Math.Max(0, high - fHigh);
        var fLow = low > 0 ? low + SpringBack(table, setBefore + low, ref near) - travel : -high;
        var (set, f) = fHigh < -fLow ? (high, fHigh) : (low, fLow);
        for (var (i, side) = (0, 0); Math.Abs(f) > close && i < MostSteps; i++)
        {
            set = i % 4 == 3 ? (low + high) / 2 : low - (fLow * (high - low) / (fHigh - fLow));
            f = set + SpringBack(table, setBefore + set, ref near) - travel;
            if (f < 0)
            {
                (low, fLow, fHigh, side) = (set, f, side < 0 ? fHigh / 2 : fHigh, -1);
            }
            else
            {
                (high, fHigh, fLow, side) = (set, f, side > 0 ? fLow / 2 : fLow, 1);
            }
        }

        return set;
    }
}
