using Plumbmark.Simulations;

// dotnet run -c Release --project bench/Plumbmark.Simulations -- press > bench/results/press.txt
var simulations = new Dictionary<string, Action<TextWriter>>(StringComparer.Ordinal) { ["press"] = PressSimulation.Run };
if (args is not [var name] || !simulations.TryGetValue(name, out var run))
{
    Console.Error.WriteLine($"Which simulation? {string.Join(", ", simulations.Keys.Order(StringComparer.Ordinal))}");
    return 64;
}

run(Console.Out);
return 0;
