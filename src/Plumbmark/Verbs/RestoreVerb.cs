using System.CommandLine;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark restore FILE</c>: brings a backup back without taking anything away.</summary>
internal static class RestoreVerb
{
    public static Command Command(Output output)
    {
        var file = new Argument<string>("FILE") { Description = Texts.Say("verb.restore.a-file-that-backup-wrote") };
        var data = DataOption.Create();
        var command = new Command("restore", Texts.Say("verb.restore.bring-a-backup-back-nothing")) { file, data };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(data), output));
        return command;
    }

    public static int Run(string file, string? data, Output output)
    {
        var bytes = CarFileArgument.Bytes(file);
        using var journals = DataOption.Open(data, output);
        var restored = journals.Restore(bytes);
        output.Remark(Texts.Say("verb.restore.cars-brought-in-continued-from", restored.Added, restored.Extended, restored.AlreadyThere));
        return ExitCode.True;
    }
}
