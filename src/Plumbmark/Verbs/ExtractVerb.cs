using System.CommandLine;
using Plumbmark.Drawing.Exchange;
using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark extract WHAT FILE -o out</c>: readings, results and drawings for other programs.</summary>
internal static class ExtractVerb
{
    private static readonly (string Word, string Meaning, Func<CarFile, byte[]> Make)[] s_extracts =
    [
        ("readings", "every reading as CSV, which add-readings reads back", ReadingsCsv.Write),
        ("points", "where the points are, as CSV", car => ResultTables.Points(car, FloorInspection.Of(car)).Csv()),
        ("pairs", "left against right, as CSV", car => ResultTables.Pairs(FloorInspection.Of(car)).Csv()),
        ("checks", "every check with its verdict, as CSV", car => ResultTables.Checks(FloorInspection.Of(car)).Csv()),
        ("workbook", "all of these as XLSX", car => Workbook.Write(ResultTables.All(car, FloorInspection.Of(car)))),
        ("plan", "the plan view as SVG", car => SvgWriter.WriteFile(FloorPlanDrawing.Of(car, FloorInspection.Of(car)))),
        ("side", "the side view as SVG", car => SvgWriter.WriteFile(FloorSideDrawing.Of(car, FloorInspection.Of(car)))),
        ("dxf", "floor marks and frame as DXF, full size", car => FrameDxf.Write(car, FloorInspection.Of(car))),
    ];

    public static Command Command(Output output)
    {
        var what = new Argument<string>("WHAT") { Description = string.Join("; ", s_extracts.Select(e => $"{e.Word}: {e.Meaning}")) + "." };
        var file = CarFileArgument.Create();
        var to = new Option<string>("--output", "-o") { Description = "The file to write, or - for standard output.", Required = true };
        var command = new Command("extract", "Write readings, results or drawings for other programs.") { what, file, to };
        command.Validators.Add(result =>
        {
            if (result.GetValue(what) is { } found && !Array.Exists(s_extracts, e => e.Word == found))
            {
                result.AddError($"Found \"{found}\" for WHAT; one of {string.Join(", ", s_extracts.Select(e => e.Word))} is needed.");
            }
        });
        command.SetAction(parsed => Run(parsed.GetRequiredValue(what), parsed.GetRequiredValue(file), parsed.GetRequiredValue(to), output));
        return command;
    }

    public static int Run(string what, string file, string to, Output output) =>
        CarFileArgument.Run(
            file,
            output,
            car =>
            {
                ResultFile.Write(to, Array.Find(s_extracts, e => e.Word == what).Make(car), output);
                return ExitCode.True;
            }
        );
}
