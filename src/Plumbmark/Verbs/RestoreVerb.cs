using System.CommandLine;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark restore FILE</c>: brings a backup back without taking anything away.</summary>
internal static class RestoreVerb
{
    public static Command Command(Output output)
    {
        var file = new Argument<string>("FILE") { Description = "A file that backup wrote, or - for standard input." };
        var data = DataOption.Create();
        var command = new Command("restore", "Bring a backup back. Nothing that is here is replaced or removed.") { file, data };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(data), output));
        return command;
    }

    public static int Run(string file, string? data, Output output)
    {
        var bytes = CarFileArgument.Bytes(file);
        using var journals = DataOption.Open(data, output);
        var restored = journals.Restore(bytes);
        output.Remark(
            $"Cars brought in: {restored.Added}; continued from the backup: {restored.Extended}; already here: {restored.AlreadyThere}."
        );
        return ExitCode.True;
    }
}
