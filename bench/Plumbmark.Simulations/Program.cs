using Plumbmark.Simulations;

// dotnet run -c Release --project bench/Plumbmark.Simulations -- NAME > bench/results/NAME.txt
var simulations = new Dictionary<string, Action<TextWriter>>(StringComparer.Ordinal)
{
    ["answer"] = ReadingToAnswer.Run,
    ["bench"] = BenchSimulation.Run,
    ["blunders"] = BlunderSimulation.Run,
    ["coverage"] = CoverageSimulation.Run,
    ["floor"] = output => FloorSimulation.Run(output, args.Length > 1 ? int.Parse(args[1]) : 2000),
    ["press"] = PressSimulation.Run,
    ["road"] = RoadSimulation.Run,
    ["speed"] = Speed.Run,
};
if (args.Length == 0 || !simulations.TryGetValue(args[0], out var run))
{
    Console.Error.WriteLine($"Which simulation? {string.Join(", ", simulations.Keys.Order(StringComparer.Ordinal))}");
    return 64;
}

run(Console.Out);
return 0;
