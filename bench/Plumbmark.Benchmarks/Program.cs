using System.Globalization;
using BenchmarkDotNet.Running;
using Plumbmark.Benchmarks;

// dotnet run -c Release --project bench/Plumbmark.Benchmarks -- goals > bench/results/goals.txt
// dotnet run -c Release --project bench/Plumbmark.Benchmarks -- compare FOLDER REPEATS   (see bench/compare)
// dotnet run -c Release --project bench/Plumbmark.Benchmarks -- --filter '*'              (BenchmarkDotNet, every kernel)
switch (args)
{
    case ["goals"]:
        Goals.Run(Console.Out);
        return 0;
    case ["compare", var folder, var repeats]:
        Comparison.Run(folder, int.Parse(repeats, CultureInfo.InvariantCulture));
        return 0;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Kernels).Assembly).Run(args);
        return 0;
}
