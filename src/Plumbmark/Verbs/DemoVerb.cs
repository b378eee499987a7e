using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark demo</c>: prints the invented demo car as a car file, or one of its suspension with a single fault.</summary>
internal static class DemoVerb
{
    private static readonly Dictionary<string, DemoRoad.Fault> s_faults = new(StringComparer.Ordinal)
    {
        ["as-drawn"] = DemoRoad.Fault.None,
        ["bent-mount"] = DemoRoad.Fault.BentMount,
        ["wrong-lever"] = DemoRoad.Fault.WrongLever,
        ["harmless-eighth"] = DemoRoad.Fault.HarmlessEighth,
    };

    public static Command Command(Output output)
    {
        var road = new Option<string?>("--road")
        {
            Description = $"Instead a demo car whose whole suspension is measured: {string.Join(", ", s_faults.Keys)}.",
            HelpName = "FAULT",
        };
        road.AcceptOnlyFromAmong([.. s_faults.Keys]);
        var command = new Command("demo", "Print the car file of the invented demo car.") { road };
        command.SetAction(parsed => Run(parsed.GetValue(road), output));
        return command;
    }

    public static int Run(string? fault, Output output)
    {
        output.Result(CarFileWriter.Write(fault is null ? DemoCar.File() : DemoRoad.Car(s_faults[fault])));
        return ExitCode.True;
    }
}
