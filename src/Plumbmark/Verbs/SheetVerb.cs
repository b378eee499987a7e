using System.CommandLine;
using System.Globalization;
using Plumbmark.Drawing.Sheets;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Inspection.Language;
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
        var kind = new Argument<string>("KIND") { Description = Texts.Say("verb.sheet.which-sheet", string.Join(", ", s_kinds)) };
        var file = CarFileArgument.Create();
        var after = new Argument<string?>("AFTER")
        {
            Description = Texts.Say("verb.sheet.the-later-car-file-for"),
            Arity = ArgumentArity.ZeroOrOne,
        };
        var to = new Option<string>("--output", "-o") { Description = Texts.Say("verb.sheet.the-pdf-to-write-or"), Required = true };
        var paper = new Option<string>("--paper") { Description = Texts.Say("verb.sheet.a4-or-letter"), DefaultValueFactory = _ => "a4" };
        paper.AcceptOnlyFromAmong(s_papers);
        var date = new Option<DateOnly?>("--date")
        {
            Description = Texts.Say("verb.sheet.the-day-written-on-the"),
            HelpName = "DAY",
            CustomParser = result =>
            {
                var text = result.Tokens[0].Value;
                if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
                {
                    return day;
                }

                result.AddError(Texts.Say("verb.sheet.found-for-date-a-day", text));
                return null;
            },
        };
        var by = new Option<string?>("--by") { Description = Texts.Say("verb.sheet.who-made-it-without-it"), HelpName = "NAME" };
        var noSerial = new Option<bool>("--no-serial") { Description = Texts.Say("verb.sheet.leave-the-serial-number-off") };
        var planned = new Option<bool>("--planned") { Description = Texts.Say("verb.sheet.for-form-ask-for-doubted") };
        var again = new Option<bool>("--again") { Description = Texts.Say("verb.sheet.for-form-ask-for-every") };
        var command = new Command("sheet", Texts.Say("verb.sheet.write-a-sheet-to-print"))
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
                result.AddError(Texts.Say("verb.sheet.found-for-kind-one-of", found, string.Join(", ", s_kinds)));
            }
            else if ((result.GetValue(kind) == BeforeAfter) != (result.GetValue(after) is not null))
            {
                result.AddError(Texts.Say("verb.sheet.two-car-files-are-needed"));
            }

            if (result.GetValue(planned) && result.GetValue(again))
            {
                result.AddError(Texts.Say("verb.sheet.found-both-planned-and-again"));
            }

            if ((result.GetValue(planned) || result.GetValue(again)) && result.GetValue(kind) is not (null or Form))
            {
                result.AddError(Texts.Say("verb.sheet.planned-and-again-are-for"));
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
