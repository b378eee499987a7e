using System.CommandLine;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark plan FILE [--json] [--to LENGTH]</c>: what to measure, in walking order, to settle everything.</summary>
internal static class PlanVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var json = new Option<bool>("--json") { Description = Texts.Say("verb.plan.print-one-json-object-lengths") };
        var to = new Option<string?>("--to") { Description = Texts.Say("verb.plan.the-limit-to-settle-to") };
        var tape = new Option<double?>("--minutes-length") { Description = Texts.Say("verb.plan.minutes-for-one-tape-length") };
        var height = new Option<double?>("--minutes-height") { Description = Texts.Say("verb.plan.minutes-for-one-height") };
        var drop = new Option<double?>("--minutes-drop") { Description = Texts.Say("verb.plan.minutes-for-one-more-drop") };
        var command = new Command("plan", Texts.Say("verb.plan.what-to-measure-in-walking")) { file, json, to, tape, height, drop };
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
            output.Remark(Texts.Say("verb.plan.minutes-must-be-more-than"));
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
                        : Refuse(Texts.Say("verb.plan.the-limit-must-be-more"), output),
                refused => Refuse(refused.Sentence, output)
            );
    }

    private static int Refuse(string sentence, Output output)
    {
        output.Remark(Texts.Say("verb.plan.to", sentence));
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
