namespace Plumbmark.Engine.Uncertainty;

/// <summary>Turns a probability on the positive numbers round: which x has it?</summary>
internal static class PositiveQuantile
{
    /// <summary>Solves F(x) = p for x &gt; 0 by Newton's method in ln F against ln x, kept inside a bracket.</summary>
    /// <remarks>Tails are powers or exponentials, nearly straight lines in these logarithms, so few steps do even at p = 1e-100.</remarks>
    /// <param name="at">F and |dF/dx| at x.</param>
    /// <param name="probability">p, between 0 and 1 exclusive.</param>
    /// <param name="start">Any positive guess.</param>
    /// <param name="isRising">Whether F grows with x.</param>
    public static double Solve(Func<double, (double F, double Density)> at, double probability, double start, bool isRising)
    {
        var (low, high) = (-700.0, 700.0);
        var w = Math.Clamp(Math.Log(start), low, high);
        for (var i = 0; i < 200; i++)
        {
            var x = Math.Exp(w);
            var (f, density) = at(x);
            var error = GammaFunction.LogOnePlus((f - probability) / probability); // ln F − ln p
            if (error > 0 == isRising)
            {
                high = w;
            }
            else
            {
                low = w;
            }

            var step = error * f / (x * density) * (isRising ? 1 : -1);
            if (Math.Abs(step) < 1e-10)
            {
                return Math.Exp(w - step); // Newton's next error would be of the order of step², below a double's digits
            }

            var next = w - step;
            w = next > low && next < high ? next : (low + high) / 2;
        }

        return Math.Exp(w);
    }
}
