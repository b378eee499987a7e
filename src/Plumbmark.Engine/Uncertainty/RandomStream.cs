using System.Numerics;

namespace Plumbmark.Engine.Uncertainty;

/// <summary>Random numbers that come the same for the same seed, on every machine and in every version.</summary>
/// <remarks>
/// The generator xoshiro256** 1.0 of D. Blackman and S. Vigna (Scrambled linear pseudorandom number generators, ACM TOMS 47, 2021), its state
/// filled by SplitMix64 as they advise; both are in the public domain. Its period is 2²⁵⁶ − 1 (JCGM 101:2008, 6.5, asks for a long one).
/// Not for secrets. Bounds, mean and standard deviation are in whatever unit the caller means; the result is in the same unit.
/// </remarks>
public sealed class RandomStream
{
    private readonly ulong[] _s;
    private double? _spareNormal;

    /// <summary>A stream for this seed; any number will do.</summary>
    public RandomStream(ulong seed)
    {
        _s = new ulong[4];
        for (var i = 0; i < 4; i++)
        {
            _s[i] = SplitMix64(ref seed);
        }
    }

    private RandomStream(ulong[] state) => _s = state;

    /// <summary>The stream with this inner state, as the generator's authors print it; for checking it against other implementations.</summary>
    /// <exception cref="ArgumentException">All four are zero: that state gives nothing but zeros.</exception>
    public static RandomStream FromState(ulong s0, ulong s1, ulong s2, ulong s3) =>
        (s0 | s1 | s2 | s3) == 0
            ? throw new ArgumentException("At least one word must not be zero.", nameof(s0))
            : new RandomStream([s0, s1, s2, s3]);

    private static ulong SplitMix64(ref ulong state)
    {
        var z = state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>64 random bits.</summary>
    public ulong Bits()
    {
        var result = BitOperations.RotateLeft(_s[1] * 5, 7) * 9;
        var t = _s[1] << 17;
        _s[2] ^= _s[0];
        _s[3] ^= _s[1];
        _s[1] ^= _s[2];
        _s[0] ^= _s[3];
        _s[2] ^= t;
        _s[3] = BitOperations.RotateLeft(_s[3], 45);
        return result;
    }

    /// <summary>Evenly between 0 and 1; never either of them.</summary>
    public double Uniform() => ((Bits() >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>Evenly between two bounds (JCGM 101:2008, 6.4.2).</summary>
    public double Rectangular(double lower, double upper) => lower + (upper - lower) * Uniform();

    /// <summary>Between two bounds, most often in the middle (JCGM 101:2008, 6.4.5): the mean of two even ones.</summary>
    public double Triangular(double lower, double upper) => lower + (upper - lower) * (Uniform() + Uniform()) / 2;

    /// <summary>Standard normal: mean 0, standard deviation 1 (JCGM 101:2008, 6.4.7).</summary>
    /// <remarks>Marsaglia's polar form of Box and Muller's method; numbers come in pairs.</remarks>
    public double Normal()
    {
        if (_spareNormal is { } spare)
        {
            _spareNormal = null;
            return spare;
        }

        var (x, y, w) = InUnitDisc();
        var factor = Math.Sqrt(-2 * Math.Log(w) / w);
        _spareNormal = y * factor;
        return x * factor;
    }

    /// <summary>Normal with this mean and standard deviation.</summary>
    public double Normal(double mean, double standardDeviation) => mean + standardDeviation * Normal();

    /// <summary>Student's t with ν degrees of freedom (JCGM 101:2008, 6.4.9, scales and shifts it); an infinite ν gives the normal.</summary>
    /// <remarks>R. W. Bailey, Polar generation of random variates with the t-distribution, Mathematics of Computation 62 (1994), 779-781.</remarks>
    public double StudentT(double degreesOfFreedom)
    {
        Demand.Positive(degreesOfFreedom);
        if (double.IsInfinity(degreesOfFreedom))
        {
            return Normal();
        }

        var (x, _, w) = InUnitDisc();
        return x * Math.Sqrt(degreesOfFreedom * (Math.Pow(w, -2 / degreesOfFreedom) - 1) / w);
    }

    private (double X, double Y, double W) InUnitDisc()
    {
        while (true)
        {
            var (x, y) = (2 * Uniform() - 1, 2 * Uniform() - 1);
            var w = x * x + y * y;
            if (w is > 0 and < 1)
            {
                return (x, y, w);
            }
        }
    }
}
