using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark check FILE [--json]</c>: is this frame true?</summary>
internal static class CheckVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var json = new Option<bool>("--json") { Description = Texts.Say("verb.check.print-one-json-object-lengths") };
        var command = new Command("check", Texts.Say("verb.check.is-this-frame-true-exit")) { file, json };
        command.SetAction(parsed => Run(new CheckOptions(parsed.GetValue(file)!, parsed.GetValue(json)), output));
        return command;
    }

    public static int Run(CheckOptions options, Output output) =>
        CarFileArgument.RunTied(options.File, output, car => Answer(car, options, output), options.AsJson);

    private static int Answer(CarFile car, CheckOptions options, Output output)
    {
        var answer = FloorInspection.Of(car);
        if (options.AsJson)
        {
            output.Result(FloorAnswerJson.Bytes(answer));
        }
        else
        {
            output.Result(FloorText.Of(car, answer));
        }

        return answer.Overall.Verdict switch
        {
            Verdict.True => ExitCode.True,
            Verdict.Out => ExitCode.Out,
            _ => ExitCode.CannotTellYet,
        };
    }
}

/// <summary>What <c>plumbmark check</c> was asked.</summary>
/// <param name="File">A path, or <c>-</c> for standard input.</param>
/// <param name="AsJson">Whether to print JSON.</param>
internal sealed record CheckOptions(string File, bool AsJson);
