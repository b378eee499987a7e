using System.Text;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>Small car files with parts, written as a person would write them. Every figure is invented.</summary>
internal static class BenchFiles
{
    /// <summary>Two steering levers of one look that differ in pad height by 0.22 in, with the break at serial 4800.</summary>
    public const string Levers = """
        { "id": "early", "kind": "steering-lever", "name": "early type", "serials": { "to": "TX 04799" }, "numbers": ["51-0417"],
          "dimensions": [ { "dimension": "pad-height", "nominal": "1.42", "tolerance": "0.010", "note": "Workshop book, 2nd edition, p. 61" },
                          { "dimension": "arm-length", "nominal": "5.50", "tolerance": "0.015" } ] },
        { "id": "late", "kind": "steering-lever", "name": "late type", "serials": { "from": "TX 04800" }, "numbers": ["51-0533"],
          "dimensions": [ { "dimension": "pad-height", "nominal": "1.20", "tolerance": "0.010" },
                          { "dimension": "arm-length", "nominal": "5.50", "tolerance": "0.015" } ] }
        """;

    public static CarFile Car(string items, string variants = "", string serial = "TX 05120", string units = "in") =>
        CarFileReader
            .Read(Bytes(items, variants, serial, units))
            .Match(file => file, faults => throw new InvalidOperationException(string.Join('\n', faults)));

    public static IReadOnlyList<string> Faults(string items, string variants = "") =>
        CarFileReader
            .Read(Bytes(items, variants, "TX 1", "in"))
            .Match<IReadOnlyList<string>>(_ => [], faults => [.. faults.Select(f => f.ToString())]);

    /// <summary>The dimensions of one part given by its measures alone.</summary>
    public static Reduction Reduce(string measures, string kind = "own", string units = "in")
    {
        var car = Car($$"""{ "id": "p", "kind": "{{kind}}", "measures": [ {{measures}} ] }""", units: units);
        return Reduction.Of(car.Parts.Items[0], car.Tools);
    }

    private static byte[] Bytes(string items, string variants, string serial, string units) =>
        Encoding.UTF8.GetBytes(
            $$"""
            { "format": "plumbmark-car", "version": 1, "units": "{{units}}", "car": { "name": "Bench", "serial": "{{serial}}" },
              "parts": { "items": [ {{items}} ], "variants": [ {{variants}} ] } }
            """
        );
}
