using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Language;

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
            Description = Texts.Say("verb.demo.instead-a-demo-car-whose", string.Join(", ", s_faults.Keys)),
            HelpName = "FAULT",
        };
        road.AcceptOnlyFromAmong([.. s_faults.Keys]);
        var command = new Command("demo", Texts.Say("verb.demo.print-the-car-file-of")) { road };
        command.SetAction(parsed => Run(parsed.GetValue(road), output));
        return command;
    }

    public static int Run(string? fault, Output output)
    {
        output.Result(CarFileWriter.Write(fault is null ? DemoCar.File() : DemoRoad.Car(s_faults[fault])));
        return ExitCode.True;
    }
}
