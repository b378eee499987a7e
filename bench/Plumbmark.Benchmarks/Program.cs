using System.Globalization;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Plumbmark.Benchmarks;

// All of it at once, with its tables in bench/results: bench/speed
// dotnet run -c Release --project bench/Plumbmark.Benchmarks -- goals
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
        // In this process: the generated projects of the usual way know neither the central versions nor the lock files.
        var job = Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance);
        BenchmarkSwitcher.FromAssembly(typeof(Kernels).Assembly).Run(args, DefaultConfig.Instance.AddJob(job));
        return 0;
}
