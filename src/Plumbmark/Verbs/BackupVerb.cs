using System.CommandLine;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark backup -o FILE</c>: the whole shed on one file.</summary>
internal static class BackupVerb
{
    public static Command Command(Output output)
    {
        var to = new Option<string>("--output", "-o") { Description = "The file to write, or - for standard output.", Required = true };
        var data = DataOption.Create();
        var command = new Command("backup", "Write every car with its journal and pictures to one file.") { to, data };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(to), parsed.GetValue(data), output));
        return command;
    }

    public static int Run(string to, string? data, Output output)
    {
        using var journals = DataOption.Open(data, output);
        ResultFile.Write(to, journals.Backup(), output);
        return ExitCode.True;
    }
}
