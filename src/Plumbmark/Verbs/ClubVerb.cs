using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Exchange;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark club FILE -o out.json</c>: the car as it may be given to a club.</summary>
internal static class ClubVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var to = new Option<string>("--output", "-o") { Description = "The car file to write, or - for standard output.", Required = true };
        var name = new Option<string?>("--name")
        {
            Description = "What the car is to be called. Without it, nothing of yours.",
            HelpName = "NAME",
        };
        var keep = new Option<bool>("--keep-serial") { Description = "Leave the serial number in." };
        var command = new Command("club", "Write book pages and measures without anything that tells whose car it is.")
        {
            file,
            to,
            name,
            keep,
        };
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
