namespace Plumbmark.Benchmarks;

internal static class Comparison
{
    public static void Run(string folder, int repeats) => throw new NotSupportedException($"{folder} {repeats}");
}
