namespace Plumbmark.Inspection.Demo;

/// <summary>Noise that is the same on every machine and in every version: integer arithmetic and sums only.</summary>
internal sealed class DemoNoise(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A draw with mean 0 and standard deviation 1, never beyond 6.</summary>
    /// <remarks>Irwin-Hall: the sum of twelve draws from 0 to 1, less 6. Logarithms and cosines may differ in their last digit between machines; sums do not.</remarks>
    public double Next()
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++)
        {
            sum += Uniform();
        }

        return sum;
    }

    // SplitMix64: Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014, figure 16.
    private double Uniform()
    {
        _state += 0x9E3779B97F4A7C15;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        z ^= z >> 31;
        return (z >> 11) * (1.0 / (1UL << 53));
    }
}
