using System.CommandLine;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark bench FILE [--json]</c>: is each loose part straight, which type is it, is it worth keeping?</summary>
internal static class BenchVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var json = new Option<bool>("--json") { Description = Texts.Say("verb.bench.print-one-json-object-millimetres") };
        var command = new Command("bench", Texts.Say("verb.bench.is-each-part-straight-which")) { file, json };
        command.Aliases.Add("bench-fit");
        command.SetAction(parsed => Run(new BenchOptions(parsed.GetValue(file)!, parsed.GetValue(json)), output));
        return command;
    }

    public static int Run(BenchOptions options, Output output) =>
        CarFileArgument.Run(options.File, output, car => Answer(car, options, output), options.AsJson);

    private static int Answer(CarFile car, BenchOptions options, Output output)
    {
        var answer = BenchInspection.Of(car);
        if (options.AsJson)
        {
            output.Result(BenchAnswerJson.Bytes(answer));
        }
        else
        {
            output.Result(BenchReport.Of(car, answer));
        }

        return answer.Verdict switch
        {
            Verdict.True => ExitCode.True,
            Verdict.Out => ExitCode.Out,
            _ => ExitCode.CannotTellYet,
        };
    }
}

/// <summary>What <c>plumbmark bench</c> was asked.</summary>
/// <param name="File">A path, or <c>-</c> for standard input.</param>
/// <param name="AsJson">Whether to print JSON.</param>
internal sealed record BenchOptions(string File, bool AsJson);
