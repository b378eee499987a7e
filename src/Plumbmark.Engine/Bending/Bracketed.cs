namespace Plumbmark.Engine.Bending;

/// <summary>Finds where a steadily rising function crosses zero between two arguments.</summary>
internal static class Bracketed
{
    private const int Steps = 200;
    private const double Spacing = 4e-16; // two units in the last place of a double: nothing lies between

    /// <summary>The crossing, by false position in its Illinois form, halving instead when the bracket shrinks too slowly.</summary>
    /// <param name="function">Not positive at <paramref name="low"/>, not negative at <paramref name="high"/>.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    /// <param name="relativeTolerance">Width of the last bracket over its larger end.</param>
    public static double Root(Func<double, double> function, double low, double high, double relativeTolerance = Spacing)
    {
        var (fLow, fHigh, side) = (function(low), function(high), 0);
        for (var i = 0; i < Steps && high - low > relativeTolerance * Math.Max(Math.Abs(low), Math.Abs(high)); i++)
        {
            var halve = i % 4 == 3 || !(fHigh > fLow);
            var x = halve ? low + ((high - low) / 2) : Math.Clamp(low - (fLow * (high - low) / (fHigh - fLow)), low, high);
            var f = function(x);
            if (f == 0)
            {
                return x;
            }

            if (f < 0)
            {
                (low, fLow) = (x, f);
                fHigh = side < 0 ? fHigh / 2 : fHigh;
                side = -1;
            }
            else
            {
                (high, fHigh) = (x, f);
                fLow = side > 0 ? fLow / 2 : fLow;
                side = 1;
            }
        }

        return low + ((high - low) / 2);
    }
}
