using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Bending;

/// <summary>One possible curve of spring-back against total set, with the logarithm of its weight.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct SpringBackCurve(double YieldTravel, double Give, int Hardening, double Early, double Fade, double LogWeight)
{
    /// <summary>The spring-back of a bite that ends with a total set, m.</summary>
    public double SpringBack(SpringBackTable table, double totalSet)
    {
        var s = Math.Max(0, totalSet) / YieldTravel;
        var early = Early > 0 ? 1 - (Early * Math.Exp(-s / Fade)) : 1;
        return (1 + Give) * YieldTravel * table.SpringBackRatio(Hardening, s) * early;
    }

    /// <summary>The set a travel leaves after an earlier total set: the root of travel = set + spring-back, m.</summary>
    /// <param name="table">The theory.</param>
    /// <param name="travel">Travel, m.</param>
    /// <param name="setBefore">Total set before, m.</param>
    /// <param name="halvings">Of the travel; 14 leave a ten-thousandth of it.</param>
    public double SetFor(SpringBackTable table, double travel, double setBefore, int halvings)
    {
        if (SpringBack(table, setBefore) >= travel)
        {
            return 0;
        }

        var (low, high) = (0.0, travel);
        for (var i = 0; i < halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = middle + SpringBack(table, setBefore + middle) < travel ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
