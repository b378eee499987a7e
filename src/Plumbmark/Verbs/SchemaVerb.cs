using System.CommandLine;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark schema</c>: prints the description of the car file.</summary>
internal static class SchemaVerb
{
    public static Command Command(Output output)
    {
        var command = new Command("schema", "Print the JSON Schema of the car file.");
        command.SetAction(_ => Run(output));
        return command;
    }

    public static int Run(Output output)
    {
        output.Result(CarSchema.Text());
        return ExitCode.True;
    }
}
