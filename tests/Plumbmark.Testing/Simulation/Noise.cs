namespace Plumbmark.Testing.Simulation;

/// <summary>Random numbers of a simulation; the seed is the caller's.</summary>
public static class Noise
{
    /// <summary>A standard normal number (Box and Muller 1958).</summary>
    public static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
