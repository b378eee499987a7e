using System.CommandLine;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark plan FILE [--json] [--to LENGTH]</c>: what to measure, in walking order, to settle everything.</summary>
internal static class PlanVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var json = new Option<bool>("--json") { Description = "Print one JSON object, lengths in millimetres." };
        var to = new Option<string?>("--to")
        {
            Description = "The limit to settle to, such as 1/16 or \"2 mm\"; without it the car's own limits.",
        };
        var tape = new Option<double?>("--minutes-length") { Description = "Minutes for one tape length." };
        var height = new Option<double?>("--minutes-height") { Description = "Minutes for one height." };
        var drop = new Option<double?>("--minutes-drop") { Description = "Minutes for one more drop of a point." };
        var command = new Command("plan", "What to measure, in walking order, and how long it takes.")
        {
            file,
            json,
            to,
            tape,
            height,
            drop,
        };
        command.SetAction(parsed =>
        {
            var usual = new ReadingMinutes();
            var minutes = usual with
            {
                Plan = parsed.GetValue(tape) ?? usual.Plan,
                Height = parsed.GetValue(height) ?? usual.Height,
                Drop = parsed.GetValue(drop) ?? usual.Drop,
            };
            return Run(new PlanOptions(parsed.GetValue(file)!, parsed.GetValue(json), parsed.GetValue(to), minutes), output);
        });
        return command;
    }

    public static int Run(PlanOptions options, Output output) =>
        CarFileArgument.Run(options.File, output, car => Plan(car, options, output), options.AsJson);

    private static int Plan(CarFile car, PlanOptions options, Output output)
    {
        if (new[] { options.Minutes.Plan, options.Minutes.Height, options.Minutes.Drop }.Any(m => !(m > 0)))
        {
            output.Remark("Minutes must be more than zero.");
            return ExitCode.Usage;
        }

        if (options.To is null)
        {
            return Tell(car, null, options, output);
        }

        return LengthText
            .Read(options.To, car.Units)
            .Match(
                to =>
                    to > Length.Zero
                        ? Tell(car, new Limits(to, to, to, LimitSource.Own), options, output)
                        : Refuse("The limit must be more than zero.", output),
                refused => Refuse(refused.Sentence, output)
            );
    }

    private static int Refuse(string sentence, Output output)
    {
        output.Remark($"--to: {sentence}");
        return ExitCode.Usage;
    }

    private static int Tell(CarFile car, Limits? limits, PlanOptions options, Output output)
    {
        var plan = FloorPlanner.For(car, limits, new FloorOptions { Minutes = options.Minutes });
        if (options.AsJson)
        {
            output.Result(FloorPlanJson.Bytes(plan));
        }
        else
        {
            output.Result(FloorPlanText.Of(car, plan));
        }

        return ExitCode.True;
    }
}

/// <summary>What <c>plumbmark plan</c> was asked.</summary>
/// <param name="File">A path, or <c>-</c> for standard input.</param>
/// <param name="AsJson">Whether to print JSON.</param>
/// <param name="To">The limit to settle to as typed; null for the car's own.</param>
/// <param name="Minutes">Minutes per kind of reading.</param>
internal sealed record PlanOptions(string File, bool AsJson, string? To, ReadingMinutes Minutes);
