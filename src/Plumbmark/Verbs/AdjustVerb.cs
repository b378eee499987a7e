using System.CommandLine;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark adjust FILE [--json]</c>: the network alone, no word about frames; what a surveyor's textbook runs through.</summary>
internal static class AdjustVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var json = new Option<bool>("--json") { Description = Texts.Say("verb.adjust.print-one-json-object-lengths") };
        var command = new Command("adjust", Texts.Say("verb.adjust.solve-the-readings-as-a")) { file, json };
        command.SetAction(parsed => Run(new AdjustOptions(parsed.GetValue(file)!, parsed.GetValue(json)), output));
        return command;
    }

    public static int Run(AdjustOptions options, Output output) =>
        CarFileArgument.RunTied(options.File, output, car => Answer(car, options, output), options.AsJson);

    private static int Answer(CarFile car, AdjustOptions options, Output output)
    {
        var answer = AdjustAnswer.Of(car);
        if (options.AsJson)
        {
            output.Result(AdjustAnswerJson.Bytes(answer));
        }
        else
        {
            output.Result(AdjustText.Of(answer));
        }

        return answer.Outcome switch
        {
            NetworkOutcome.Adjusted => ExitCode.True,
            NetworkOutcome.Refused => ExitCode.Refused,
            _ => ExitCode.CannotTellYet,
        };
    }
}

/// <summary>What <c>plumbmark adjust</c> was asked.</summary>
/// <param name="File">A path, or <c>-</c> for standard input.</param>
/// <param name="AsJson">Whether to print JSON.</param>
internal sealed record AdjustOptions(string File, bool AsJson);
