using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Store;
using Plumbmark.Web.Server;

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
    [(NotUsed, "not used"), .. ColumnMatch.Fields.Select(f => (f, MeaningOf(f)))];

    /// <summary>The empty page.</summary>
    public static ReadingsInView Of(CarRequest request) => new(request.Car);

    private static string MeaningOf(string field) =>
        field switch
        {
            "id" => "id, the reading's own name",
            "kind" => "kind: plan, direct, height, rise, offset, drop, indirect",
            "way" => "way of an indirect drop",
            "above" => "above: level or floor, for a height",
            "edge" => "edge of a hole",
            "point" => "point, of a height or a drop",
            "from" => "from, where the tape starts",
            "to" => "to, where it is read",
            "value" => "value, what was read",
            "dx" => "forward step of a drop",
            "dy" => "leftward step of a drop",
            "startAt" => "where the tape starts, to be subtracted",
            "unit" => "unit: in or mm",
            "tool" => "tool",
            "sigma" => "standard uncertainty",
            "note" => "note",
            "withdrawn" => "why it was taken back",
            _ => field,
        };
}
