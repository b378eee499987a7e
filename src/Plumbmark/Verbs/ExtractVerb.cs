using System.CommandLine;
using Plumbmark.Drawing.Exchange;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark extract WHAT FILE -o out</c>: readings, results and drawings for other programs.</summary>
internal static class ExtractVerb
{
    public static Command Command(Output output)
    {
        var what = new Argument<string>("WHAT")
        {
            Description = string.Join("; ", Extract.All.Select(e => $"{e.Word}: {e.Meaning}")) + ".",
        };
        var file = CarFileArgument.Create();
        var to = new Option<string>("--output", "-o") { Description = Texts.Say("verb.extract.the-file-to-write-or"), Required = true };
        var command = new Command("extract", Texts.Say("verb.extract.take-readings-results-or-drawings")) { what, file, to };
        command.Validators.Add(result =>
        {
            if (result.GetValue(what) is { } found && Extract.Of(found) is null)
            {
                result.AddError(Texts.Say("verb.extract.found-for-what-one-of", found, string.Join(", ", Extract.All.Select(e => e.Word))));
            }
        });
        command.SetAction(parsed =>
            Run(Extract.Of(parsed.GetRequiredValue(what))!, parsed.GetRequiredValue(file), parsed.GetRequiredValue(to), output)
        );
        return command;
    }

    private static int Run(Extract extract, string file, string to, Output output) =>
        CarFileArgument.Run(
            file,
            output,
            car =>
            {
                ResultFile.Write(to, extract.Make(car, FloorInspection.Of(car)), output);
                return ExitCode.True;
            }
        );
}
