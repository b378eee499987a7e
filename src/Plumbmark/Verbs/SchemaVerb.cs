using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark schema</c>: prints the description of the car file.</summary>
internal static class SchemaVerb
{
    public static Command Command(Output output)
    {
        var command = new Command("schema", Texts.Say("verb.schema.print-the-json-schema-of"));
        command.SetAction(_ => Run(output));
        return command;
    }

    public static int Run(Output output)
    {
        output.Result(CarSchema.Text());
        return ExitCode.True;
    }
}
