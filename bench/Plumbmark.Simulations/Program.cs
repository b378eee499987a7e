using Plumbmark.Simulations;

// dotnet run -c Release --project bench/Plumbmark.Simulations -- NAME > bench/results/NAME.txt
var simulations = new Dictionary<string, Action<TextWriter>>(StringComparer.Ordinal)
{
    ["answer"] = ReadingToAnswer.Run,
    ["bench"] = BenchSimulation.Run,
    ["blunders"] = BlunderSimulation.Run,
    ["coverage"] = CoverageSimulation.Run,
    ["floor"] = output => FloorSimulation.Run(output, Number(1, 400), Number(2, 1000)),
    ["plan-speed"] = PlanSpeed.Run,
    ["plan"] = output => PlanSimulation.Run(output, Number(1, 100)),
    ["press"] = PressSimulation.Run,
    ["road"] = RoadSimulation.Run,
    ["road-speed"] = RoadSimulation.RunSpeed,
    ["speed"] = Speed.Run,
};
if (args.Length == 0 || !simulations.TryGetValue(args[0], out var run))
{
    Console.Error.WriteLine($"Which simulation? {string.Join(", ", simulations.Keys.Order(StringComparer.Ordinal))}");
    return 64;
}

run(Console.Out);
return 0;

int Number(int at, int usual) => args.Length > at ? int.Parse(args[at]) : usual;
