using System.Runtime.InteropServices;

namespace Plumbmark.Drawing.Floor;

/// <summary>Variances of a point across and up the page and their covariance, in square metres.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Spread(double Across, double Up, double Together)
{
    // The square root of the 0.95 quantile of chi-square with two degrees of freedom, -2 ln 0.05 = 5.991.
    private static readonly double s_factor95 = Math.Sqrt(-2 * Math.Log(0.05));

    /// <summary>
    /// The ellipse in which the point lies with a probability of 95 %, assuming normal errors: half axes in metres, and the turn of the longer
    /// one in radians from across towards up. Eigenvalues of a symmetric 2x2 matrix in closed form.
    /// </summary>
    public (double AlongMetres, double AcrossMetres, double TurnRadians) Ellipse95()
    {
        var mean = (Across + Up) / 2;
        var half = Math.Sqrt(((Across - Up) / 2 * ((Across - Up) / 2)) + (Together * Together));
        var turn = Together == 0 && Across == Up ? 0 : Math.Atan2(2 * Together, Across - Up) / 2;
        return (s_factor95 * Math.Sqrt(mean + half), s_factor95 * Math.Sqrt(Math.Max(0, mean - half)), turn);
    }
}
