using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>Parts and their measures as a person would write them into a car file. Every figure is invented.</summary>
internal static class WrittenParts
{
    /// <summary>Two levers of different pad height, both straight; the car's serial number is above the break.</summary>
    public const string TwoLevers = """
        { "id": "lever.L", "kind": "steering-lever", "made": "forged", "mirror": "lever.R",
          "measures": [ { "id": "m1", "kind": "length", "dimension": "pad-height", "values": ["1.42"], "tool": "caliper" },
                        { "id": "m2", "kind": "length", "dimension": "arm-length", "values": ["5.495"], "tool": "caliper" } ] },
        { "id": "lever.R", "kind": "steering-lever", "made": "forged", "mirror": "lever.L",
          "measures": [ { "id": "m3", "kind": "length", "dimension": "pad-height", "values": ["1.20"], "tool": "caliper" },
                        { "id": "m4", "kind": "length", "dimension": "arm-length", "values": ["5.503"], "tool": "caliper" } ] }
        """;

    public static string Lever(string pad, string? length) =>
        $$"""
            { "id": "p", "kind": "steering-lever", "made": "forged", "measures": [
              { "id": "m", "kind": "length", "dimension": "pad-height", "values": ["{{pad}}"], "tool": "caliper" }
              {{(
                length is null
                    ? ""
                    : $$""", { "id": "n", "kind": "length", "dimension": "arm-length", "values": ["{{length}}"], "tool": "caliper" }"""
            )}} ] }
            """;

    public static string Arm(string made, string gap, string kind = "lower-wishbone", string condition = "") =>
        $$"""
            { "id": "arm", "kind": "{{kind}}", "made": {{(made.Length == 0 ? "null" : $"\"{made}\"")}}, "condition": [ {{condition}} ],
              "limits": [ { "dimension": "flange", "within": "1/32" } ],
              "measures": [ { "id": "m", "kind": "straightedge", "dimension": "flange", "tool": "feeler",
                              "gaps": [ { "at": 0, "gap": 0 }, { "at": 5, "gap": "{{gap}}" }, { "at": 10, "gap": 0 } ] } ] }
            """;

    public const string Rods = """
        { "id": "r", "kind": "rods", "from": "front", "to": "rear", "span": 6, "near": "9.01", "far": "9.013", "tool": "micrometer" }
        """;

    public const string Flange = """
        { "id": "f", "kind": "straightedge", "dimension": "flange", "tool": "feeler", "gaps": [ { "at": 0, "gap": 0 }, { "at": 5, "gap": ".003" }, { "at": 10, "gap": 0 } ] }
        """;

    /// <summary>A straight pressed arm of which everything was measured that a bench can see.</summary>
    public static CarFile WholeArm(string condition = "") =>
        BenchFiles.Car(
            $$"""
            { "id": "arm", "kind": "lower-wishbone", "made": "pressed", "condition": [ {{condition}} ], "measures": [ {{Rods}}, {{Flange}},
              { "id": "m", "kind": "length", "dimension": "eye-height", "values": ["2.003"], "tool": "caliper" } ] }
            """,
            """{ "id": "arm", "kind": "lower-wishbone", "name": "lower arm", "dimensions": [ { "dimension": "eye-height", "nominal": "2.00", "tolerance": "1/32" } ] }"""
        );

    public static string Eyes(string left, string right) =>
        string.Join(
            ", ",
            new[] { ("L", "R", left), ("R", "L", right) }.Select(p =>
                $$"""
                    { "id": "arm.{{p.Item1}}", "kind": "lower-wishbone", "made": "pressed", "mirror": "arm.{{p.Item2}}",
                      "measures": [ { "id": "m", "kind": "length", "dimension": "eye-height", "values": ["{{p.Item3}}"], "tool": "caliper" }, {{Rods}}, {{Flange}} ] }
                    """
            )
        );
}
