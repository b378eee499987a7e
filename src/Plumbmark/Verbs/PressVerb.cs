using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Press;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark press FILE [--json]</c>: may it be straightened cold, how is it set up, how far is the next bite, when to stop?</summary>
internal static class PressVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var json = new Option<bool>("--json") { Description = Texts.Say("verb.press.print-one-json-object-millimetres") };
        var command = new Command("press", Texts.Say("verb.press.how-is-each-part-straightened")) { file, json };
        command.SetAction(parsed => Run(new PressOptions(parsed.GetValue(file)!, parsed.GetValue(json)), output));
        return command;
    }

    public static int Run(PressOptions options, Output output) =>
        CarFileArgument.Run(options.File, output, car => Answer(car, options, output), options.AsJson);

    private static int Answer(CarFile car, PressOptions options, Output output)
    {
        var reports = car.Press.Select(PressReport.Of).ToList();
        if (options.AsJson)
        {
            output.Result(PressAnswerJson.Bytes(reports, new PressWords(car.Units)));
        }
        else
        {
            output.Result(PressTextReport.Of(car, reports));
        }

        if (reports.Any(r => r.State is PressState.Refused or PressState.Over))
        {
            return ExitCode.Out;
        }

        return reports.All(r => r.State is PressState.Straight { Verdict: not null }) ? ExitCode.True : ExitCode.CannotTellYet;
    }
}

/// <summary>What <c>plumbmark press</c> was asked.</summary>
/// <param name="File">A path, or <c>-</c> for standard input.</param>
/// <param name="AsJson">Whether to print JSON.</param>
internal sealed record PressOptions(string File, bool AsJson);
