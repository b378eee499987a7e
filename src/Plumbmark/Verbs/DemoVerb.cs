using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark demo</c>: prints the invented demo car as a car file.</summary>
internal static class DemoVerb
{
    public static Command Command(Output output)
    {
        var command = new Command("demo", "Print the car file of the invented demo car.");
        command.SetAction(_ => Run(output));
        return command;
    }

    public static int Run(Output output)
    {
        output.Result(CarFileWriter.Write(DemoCar.File()));
        return ExitCode.True;
    }
}
