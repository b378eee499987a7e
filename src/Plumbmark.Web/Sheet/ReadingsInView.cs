using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>What the page for bringing readings in shows.</summary>
/// <param name="Car">The car they are for.</param>
public sealed record ReadingsInView(OpenCar Car)
{
    /// <summary>What a column that means nothing here is sent as.</summary>
    public const string NotUsed = "-";

    /// <summary>A column of the file.</summary>
    /// <param name="Head">What stands above it.</param>
    /// <param name="Field">What it means; null when nothing.</param>
    public sealed record Column(string Head, string? Field);

    /// <summary>What was sent before; empty at first.</summary>
    public string Csv { get; init; } = "";

    /// <summary>The columns found; empty at first.</summary>
    public IReadOnlyList<Column> Columns { get; init; } = [];

    /// <summary>Whether points that are not there are to be drawn.</summary>
    public bool AddsPoints { get; init; }

    /// <summary>What is wrong, row by row; empty when nothing is.</summary>
    public IReadOnlyList<Fault> Faults { get; init; } = [];

    /// <summary>What is wrong with the form itself; null when nothing.</summary>
    public string? Sentence { get; init; }

    /// <summary>What a column can mean.</summary>
    public static IReadOnlyList<(string Value, string Text)> Meanings { get; } =
    [(NotUsed, Say("sheet.readings-in.not-used")), .. ColumnMatch.Fields.Select(f => (f, MeaningOf(f)))];

    /// <summary>The empty page.</summary>
    public static ReadingsInView Of(CarRequest request) => new(request.Car);

    private static string MeaningOf(string field) =>
        field switch
        {
            "id" => Say("sheet.readings-in.id-the-readings-own"),
            "kind" => Say("sheet.readings-in.kind-plan-direct-height"),
            "way" => Say("sheet.readings-in.way-of-an-indirect"),
            "above" => Say("sheet.readings-in.above-level-or-floor"),
            "edge" => Say("sheet.readings-in.edge-of-a-hole"),
            "point" => Say("sheet.readings-in.point-of-a-height"),
            "from" => Say("sheet.readings-in.from-where-the-tape"),
            "to" => Say("sheet.readings-in.to-where-it-is"),
            "value" => Say("sheet.readings-in.value-what-was-read"),
            "dx" => Say("sheet.readings-in.forward-step-of-a"),
            "dy" => Say("sheet.readings-in.leftward-step-of-a"),
            "startAt" => Say("sheet.readings-in.where-the-tape-starts"),
            "unit" => Say("sheet.readings-in.unit-in-or-mm"),
            "tool" => "tool",
            "sigma" => Say("sheet.readings-in.standard-uncertainty"),
            "note" => "note",
            "withdrawn" => Say("sheet.readings-in.why-it-was-taken"),
            _ => field,
        };
}
