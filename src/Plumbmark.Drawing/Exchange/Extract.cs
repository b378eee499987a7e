using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Exchange;

/// <summary>Something that can be taken out of a car for other programs. The same car gives the same bytes.</summary>
/// <param name="Word">Its word in addresses and on the command line.</param>
/// <param name="Meaning">What it is, as part of a sentence.</param>
/// <param name="Ending">How its file is called at the end.</param>
/// <param name="ContentType">Its media type.</param>
/// <param name="Make">The bytes of the file.</param>
public sealed record Extract(string Word, string Meaning, string Ending, string ContentType, Func<CarFile, FloorAnswer, byte[]> Make)
{
    private const string Csv = "text/csv";
    private const string Svg = "image/svg+xml";
    private const string Xlsx = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    /// <summary>Everything that can be taken out.</summary>
    public static IReadOnlyList<Extract> All { get; } =
    [
        new("readings", Texts.Say("drawing.extract.every-reading-as-csv-as"), "csv", Csv, (car, _) => ReadingsCsv.Write(car)),
        new(
            "points",
            Texts.Say("drawing.extract.where-the-points-are-as"),
            "csv",
            Csv,
            (car, answer) => ResultTables.Points(car, answer).Csv()
        ),
        new("pairs", Texts.Say("drawing.extract.left-against-right-as-csv"), "csv", Csv, (_, answer) => ResultTables.Pairs(answer).Csv()),
        new(
            "checks",
            Texts.Say("drawing.extract.every-check-with-its-verdict"),
            "csv",
            Csv,
            (_, answer) => ResultTables.Checks(answer).Csv()
        ),
        new(
            "workbook",
            Texts.Say("drawing.extract.readings-and-results-of-every"),
            "xlsx",
            Xlsx,
            (car, answer) => Workbook.Write(ResultTables.All(car, answer))
        ),
        new(
            "plan",
            Texts.Say("drawing.extract.the-plan-view-as-svg"),
            "svg",
            Svg,
            (car, answer) => SvgWriter.WriteFile(FloorPlanDrawing.Of(car, answer))
        ),
        new(
            "side",
            Texts.Say("drawing.extract.the-side-view-as-svg"),
            "svg",
            Svg,
            (car, answer) => SvgWriter.WriteFile(FloorSideDrawing.Of(car, answer))
        ),
        new("dxf", Texts.Say("drawing.extract.floor-marks-and-frame-as"), "dxf", "image/vnd.dxf", FrameDxf.Write),
    ];

    /// <summary>The extract of that word, or null.</summary>
    public static Extract? Of(string word) => All.FirstOrDefault(e => e.Word == word);
}
