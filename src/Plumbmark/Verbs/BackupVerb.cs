using System.CommandLine;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark backup -o FILE</c>: the whole shed on one file.</summary>
internal static class BackupVerb
{
    public static Command Command(Output output)
    {
        var to = new Option<string>("--output", "-o") { Description = Texts.Say("verb.backup.the-file-to-write-or"), Required = true };
        var data = DataOption.Create();
        var command = new Command("backup", Texts.Say("verb.backup.write-every-car-with-its")) { to, data };
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
