using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark club FILE -o out.json</c>: the car as it may be given to a club.</summary>
internal static class ClubVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var to = new Option<string>("--output", "-o") { Description = Texts.Say("verb.club.the-car-file-to-write"), Required = true };
        var name = new Option<string?>("--name") { Description = Texts.Say("verb.club.what-the-car-is-to"), HelpName = "NAME" };
        var keep = new Option<bool>("--keep-serial") { Description = Texts.Say("verb.club.leave-the-serial-number-in") };
        var command = new Command("club", Texts.Say("verb.club.write-book-pages-and-measures")) { file, to, name, keep };
        command.SetAction(parsed =>
            CarFileArgument.Run(
                parsed.GetRequiredValue(file),
                output,
                car =>
                {
                    var given = ClubFile.Of(car, parsed.GetValue(name), parsed.GetValue(keep));
                    ResultFile.Write(parsed.GetRequiredValue(to), CarFileWriter.Write(given), output);
                    return ExitCode.True;
                }
            )
        );
        return command;
    }
}
