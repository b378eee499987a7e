using System.CommandLine;
using System.Globalization;
using Plumbmark.Drawing.Sheets;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark sheet KIND FILE -o out.pdf</c>: a sheet on paper.</summary>
internal static class SheetVerb
{
    private const string BeforeAfter = "before-after";
    private const string Form = "form";
    private static readonly string[] s_kinds = ["frame", "workshop", BeforeAfter, Form, "parts", "press", "road"];
    private static readonly string[] s_papers = ["a4", "letter"];

    /// <summary>What may be chosen.</summary>
    /// <param name="Kind">Which sheet.</param>
    /// <param name="File">The car file.</param>
    /// <param name="After">The later car file of a sheet before and after; null for the other kinds.</param>
    /// <param name="Out">Where to write the PDF; - for standard output.</param>
    /// <param name="Sheet">Paper, date, version, author.</param>
    /// <param name="Round">What a form asks for.</param>
    internal sealed record Options(string Kind, string File, string? After, string Out, SheetOptions Sheet, RoundScope Round);

    public static Command Command(Output output)
    {
        var kind = new Argument<string>("KIND") { Description = $"Which sheet: {string.Join(", ", s_kinds)}." };
        var file = CarFileArgument.Create();
        var after = new Argument<string?>("AFTER")
        {
            Description = "The later car file, for before-after.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var to = new Option<string>("--output", "-o") { Description = "The PDF to write, or - for standard output.", Required = true };
        var paper = new Option<string>("--paper") { Description = "a4 or letter.", DefaultValueFactory = _ => "a4" };
        paper.AcceptOnlyFromAmong(s_papers);
        var date = new Option<DateOnly?>("--date")
        {
            Description = "The day written on the sheet, as 2026-05-31. Without it, today.",
            HelpName = "DAY",
            CustomParser = result =>
            {
                var text = result.Tokens[0].Value;
                if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
                {
                    return day;
                }

                result.AddError($"Found \"{text}\" for --date; a day as 2026-05-31 is needed.");
                return null;
            },
        };
        var by = new Option<string?>("--by") { Description = "Who made it. Without it, nobody is named.", HelpName = "NAME" };
        var noSerial = new Option<bool>("--no-serial") { Description = "Leave the serial number off the sheet." };
        var planned = new Option<bool>("--planned")
        {
            Description = "For form: ask for doubted readings once more and for what the plan verb asks for, not for the usual readings.",
        };
        var again = new Option<bool>("--again") { Description = "For form: ask for every usual reading, also for those already taken." };
        var command = new Command(
            "sheet",
            "Write a sheet to print: the frame, what a workshop should move, before and after, a blank form, the parts, the press, the road."
        )
        {
            kind,
            file,
            after,
            to,
            paper,
            date,
            by,
            noSerial,
            planned,
            again,
        };
        command.Validators.Add(result =>
        {
            if (result.GetValue(kind) is { } found && !s_kinds.Contains(found))
            {
                result.AddError($"Found \"{found}\" for KIND; one of {string.Join(", ", s_kinds)} is needed.");
            }
            else if ((result.GetValue(kind) == BeforeAfter) != (result.GetValue(after) is not null))
            {
                result.AddError("Two car files are needed for before-after, and one for every other sheet.");
            }

            if (result.GetValue(planned) && result.GetValue(again))
            {
                result.AddError("Found both --planned and --again; a form asks for one or the other.");
            }

            if ((result.GetValue(planned) || result.GetValue(again)) && result.GetValue(kind) is not (null or Form))
            {
                result.AddError("--planned and --again are for the sheet form only.");
            }
        });
        command.SetAction(parsed =>
            Run(
                new Options(
                    parsed.GetRequiredValue(kind),
                    parsed.GetRequiredValue(file),
                    parsed.GetValue(after),
                    parsed.GetRequiredValue(to),
                    new SheetOptions(
                        parsed.GetValue(paper) == "letter" ? Paper.Letter : Paper.A4,
                        parsed.GetValue(date) ?? DateOnly.FromDateTime(DateTime.Now),
                        ProgramVersion.Text,
                        parsed.GetValue(by),
                        !parsed.GetValue(noSerial)
                    ),
                    parsed.GetValue(planned) ? RoundScope.Planned
                        : parsed.GetValue(again) ? RoundScope.All
                        : RoundScope.Usual
                ),
                output
            )
        );
        return command;
    }

    public static int Run(Options options, Output output) =>
        options.After is null
            ? CarFileArgument.Run(options.File, output, car => Write(options, output, car, car))
            : CarFileArgument.Run(options.File, options.After, output, (car, later) => Write(options, output, car, later));

    private static int Write(Options options, Output output, CarFile car, CarFile later)
    {
        var pdf = options.Kind switch
        {
            "workshop" => WorkshopSheet.Pdf(car, FloorInspection.Of(car), options.Sheet),
            Form => BlankForm.Pdf(car, MeasuringRound.Of(car, options.Round), options.Sheet),
            "press" => PressSheet.Pdf(car, options.Sheet),
            "road" => RoadSheet.Pdf(car, RoadInspection.Of(car), options.Sheet),
            "parts" => PartsSheet.Pdf(car, BenchInspection.Of(car), options.Sheet),
            BeforeAfter => BeforeAfterSheet.Pdf(car, FloorInspection.Of(car), later, FloorInspection.Of(later), options.Sheet),
            _ => FrameSheet.Pdf(car, FloorInspection.Of(car), options.Sheet),
        };
        ResultFile.Write(options.Out, pdf, output);
        return ExitCode.True;
    }
}
