using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark road FILE</c>: what the wheels will do, and whether the adjusters can absorb it.</summary>
internal static class RoadVerb
{
    // A minute's work on a slow machine; more trials settle nothing that a workshop could see.
    private const int MostTrials = 5_000_000;

    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var json = new Option<bool>("--json") { Description = Texts.Say("verb.road.print-the-answer-as-json") };
        var trials = new Option<int>("--trials") { Description = Texts.Say("verb.road.check-the-uncertainties-by-so") };
        trials.Validators.Add(result =>
        {
            if (result.GetValue(trials) is < 0 or 1 or > MostTrials)
            {
                result.AddError(Texts.Say("verb.road.trials-needs-0-or-a", MostTrials));
            }
        });
        var command = new Command("road", Texts.Say("verb.road.what-the-wheels-will-do")) { file, json, trials };
        command.SetAction(parsed => Run(new RoadOptions(parsed.GetValue(file)!, parsed.GetValue(json), parsed.GetValue(trials)), output));
        return command;
    }

    public static int Run(RoadOptions options, Output output) =>
        CarFileArgument.Run(options.File, output, car => Answer(car, options, output), options.AsJson);

    private static int Answer(CarFile car, RoadOptions options, Output output)
    {
        var answer = RoadInspection.Of(car, options.Trials);
        if (options.AsJson)
        {
            output.Result(RoadAnswerJson.Bytes(answer));
        }
        else
        {
            output.Result(RoadText.Of(answer, RoadDisplay.Of(car)));
        }

        return answer.Verdict switch
        {
            Verdict.True => ExitCode.True,
            Verdict.Out => ExitCode.Out,
            _ => ExitCode.CannotTellYet,
        };
    }
}

/// <summary>What <c>plumbmark road</c> was asked.</summary>
/// <param name="File">A path, or <c>-</c> for standard input.</param>
/// <param name="AsJson">Whether to print JSON.</param>
/// <param name="Trials">How many cars to try at random; 0 for none.</param>
internal sealed record RoadOptions(string File, bool AsJson, int Trials);
