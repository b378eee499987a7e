using Plumbmark.Inspection.Bench;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>Measures worked into dimensions, each checked against a calculation by hand beside it.</summary>
public class ReductionTests
{
    private const double Inch = 0.0254;
    private const double Millimetre = 1e-3;
    private const double Degree = Math.PI / 180;

    [Fact]
    public void Bore_OvalityTaperAndWear_ByHand()
    {
        // Mouth .7535 x .7515, deep .7520 x .7510, pin .7480, each read to u = .0005:
        // diameter mean .7520; ovality .0020 at the mouth (.0010 deep); taper .7525 - .7515 = .0010; clearance .7535 - .7480 = .0055.
        var bore = BenchFiles.Reduce(
            """{ "id": "m", "kind": "bore", "bore": "eye", "mouth": [".7535", ".7515"], "deep": [".7520", ".7510"], "pin": ".7480", "sigma": "0.0005" }"""
        );
        Is(bore, "eye.diameter", .7520 * Inch, .0005 / 2 * Inch);
        Is(bore, "eye.ovality", .0020 * Inch, .0005 * Math.Sqrt(2) * Inch);
        Is(bore, "eye.taper", .0010 * Inch, .0005 * Inch);
        Is(bore, "eye.clearance", .0055 * Inch, .0005 * Math.Sqrt(2) * Inch);
        Assert.Equal(DimensionNature.Roundness, bore.Dimension("eye.ovality")!.Nature);
    }

    [Fact]
    public void Bore_Bush_GripIsAtTheWidestPlace()
    {
        // Bush 1.0030 in a bore of 1.0010 x 1.0015: the least grip is 1.0030 - 1.0015 = .0015.
        var bore = BenchFiles.Reduce("""{ "id": "m", "kind": "bore", "bore": "eye", "mouth": ["1.0010", "1.0015"], "bush": "1.0030" }""");
        Is(bore, "eye.grip", .0015 * Inch);
        Assert.Null(bore.Dimension("eye.taper"));
    }

    [Theory]
    [InlineData("centre", "9.000", 9.0)]
    [InlineData("inside", "8.250", 9.0)] // + (.75 + .75) / 2
    [InlineData("outside", "9.750", 9.0)] // - (.75 + .75) / 2
    public void Centres_FromAnyEdge_AreTheSame(string over, string value, double centres)
    {
        var part = BenchFiles.Reduce(
            $$"""
            { "id": "c", "kind": "centres", "from": "front", "to": "rear", "values": ["{{value}}"], "over": "{{over}}" },
            { "id": "a", "kind": "bore", "bore": "front", "mouth": [".75", ".75"] },
            { "id": "b", "kind": "bore", "bore": "rear", "mouth": [".75", ".75"] }
            """
        );
        Is(part, "front/rear.centres", centres * Inch);
    }

    [Fact]
    public void Centres_InsideWithoutBores_AsksForThem()
    {
        var part = BenchFiles.Reduce(
            """{ "id": "c", "kind": "centres", "from": "front", "to": "rear", "values": ["8.25"], "over": "inside" }"""
        );
        Assert.Null(part.Dimension("front/rear.centres"));
        Assert.Contains("needs the diameter of front and rear", Assert.Single(part.Wanting), StringComparison.Ordinal);
    }

    [Fact]
    public void Heights_OnATiltedFace_AreSquareToIt()
    {
        // The face rises 1 in 100 along x. A place 30.000 mm above it square to the face, at x 200: its height is 2 + 30 cos(atan .01), at
        // x 200 - 30 sin(atan .01).
        var (c, s) = (Math.Cos(Math.Atan(.01)), Math.Sin(Math.Atan(.01)));
        var measure = FormattableString.Invariant(
            $$"""
            { "id": "h", "kind": "heights", "sigma": "0.05",
              "face": [ { "x": 0, "y": 0, "height": 0 }, { "x": 100, "y": 0, "height": 1 }, { "x": 0, "y": 50, "height": 0 }, { "x": 100, "y": 50, "height": 1 } ],
              "places": [ { "dimension": "pad-height", "x": {{200 - (30 * s):F6}}, "y": 25, "height": {{2 + (30 * c):F6}} } ] }
            """
        );
        var pad = BenchFiles.Reduce(measure, units: "mm").Dimension("pad-height")!;
        Assert.Equal(30 * Millimetre, pad.Si, 1e-8);
        // Plane under x = 200: centroid 50, spread 4 x 50²: u² = σ² (1/4 + 150²/10000); with the reading itself σ² more: σ √(1 + 2.5).
        Assert.Equal(.05 * Millimetre * Math.Sqrt(1 + 2.5), pad.U, 1e-8);
        Assert.Null(pad.Remark);
    }

    [Fact]
    public void Heights_FaceNotFlat_IsSaidAndDoubted()
    {
        var pad = BenchFiles
            .Reduce(
                """
                { "id": "h", "kind": "heights", "sigma": "0.02",
                  "face": [ { "x": 0, "y": 0, "height": 0 }, { "x": 100, "y": 0, "height": 0.5 }, { "x": 0, "y": 50, "height": 0.5 }, { "x": 100, "y": 50, "height": 0 } ],
                  "places": [ { "dimension": "pad-height", "x": 50, "y": 25, "height": 30 } ] }
                """,
                units: "mm"
            )
            .Dimension("pad-height")!;
        // Saddle of ±0.25: Σv² = .25, one degree of freedom, so s = .5 instead of .02, and the plane is known to s/2 at its middle.
        Assert.Contains("not flat", pad.Remark, StringComparison.Ordinal);
        Assert.Equal(Math.Sqrt((.02 * .02) + (.25 * .25)) * Millimetre, pad.U, 1e-8);
        Assert.Equal(29.75 * Millimetre, pad.Si, 1e-8);
    }

    [Fact]
    public void Heights_FaceOnOneLine_AsksForOneMore()
    {
        var part = BenchFiles.Reduce(
            """
            { "id": "h", "kind": "heights",
              "face": [ { "x": 0, "y": 0, "height": 0 }, { "x": 1, "y": 0, "height": 0 }, { "x": 2, "y": 0, "height": 0 } ],
              "places": [ { "dimension": "pad-height", "x": 1, "y": 1, "height": 1 } ] }
            """
        );
        Assert.Empty(part.Dimensions);
        Assert.Contains("one line", Assert.Single(part.Wanting), StringComparison.Ordinal);
    }

    [Fact]
    public void Straightedge_Rail_IsTheNarrowestStrip()
    {
        // Own LP check of the rail: zone 3.828571 along y; square to a line of slope 8.5714e-5 the cosine changes nothing in these digits.
        var gaps = string.Join(
            ", ",
            new[] { "0", "1.2", "2.9", "3.1", "4.0", "2.2", "1.1", ".3" }.Select((g, i) => $$"""{ "at": {{500 * i}}, "gap": "{{g}}" }""")
        );
        var rail = BenchFiles.Reduce(
            $$"""{ "id": "s", "kind": "straightedge", "dimension": "flange", "gaps": [ {{gaps}} ], "sigma": "0.1" }""",
            units: "mm"
        );
        // u = σ √(1 + (3/7)² + (4/7)²), because the strip hangs on stations 0, 2000 and 3500.
        Is(rail, "flange", 3.828571 * Millimetre, .1 * Math.Sqrt(1 + (25.0 / 49)) * Millimetre, 1e-9);
    }

    [Fact]
    public void Straightedge_FeelersAndPaper_BracketTheGap()
    {
        // .004 goes, .006 does not: .005 ± .001/√3. Two sheets: .20 to .30 mm. Feeler's own u .02 mm, paper ± 5 %.
        var flange = BenchFiles.Reduce(
            """
            { "id": "s", "kind": "straightedge", "dimension": "flange",
              "gaps": [ { "at": 0, "gap": 0 }, { "at": 1, "goes": "0.10 mm", "stops": "0.20 mm" }, { "at": 2, "sheets": 0 } ] }
            """
        );
        // Chord from 0 to 0.05 mm over 2 in; the middle stands 0.15 - 0.025 above it.
        Assert.Equal(.125 * Millimetre, flange.Dimension("flange")!.Si, 1e-9);
        var u = Math.Sqrt((.02 * .02) + (.1 * .1 / 12)) * Math.Sqrt(1.5);
        Assert.InRange(flange.Dimension("flange")!.U / Millimetre, u, 1.01 * u);
    }

    [Fact]
    public void Rods_OutOfParallelAndTwisted_ByHand()
    {
        // 9.015 - 9.000 over 6 in = .0025 rad. Heights: the first rod rises .010, the second .040 over 6 in: .005 rad more.
        var part = BenchFiles.Reduce(
            """
            { "id": "r", "kind": "rods", "from": "front", "to": "rear", "span": 6, "near": "9.000", "far": "9.015",
              "fromHeights": ["2.000", "2.010"], "toHeights": ["2.100", "2.140"], "sigma": "0.002" }
            """
        );
        Is(part, "front/rear.parallel", Math.Atan(.015 / 6), .002 * Math.Sqrt(2) / 6);
        Is(part, "front/rear.twist", Math.Atan(.04 / 6) - Math.Atan(.01 / 6), 2 * .002 / 6);
    }

    [Fact]
    public void Rods_OnASlopingPlate_TwistIsTheSame()
    {
        const string Rods = """
            { "id": "r", "kind": "rods", "from": "a", "to": "b", "span": 10, "fromHeights": ["2.000", "FROM"], "toHeights": ["3.000", "TO"] }
            """;
        var level = BenchFiles.Reduce(
            Rods.Replace("FROM", "2.000", StringComparison.Ordinal).Replace("TO", "3.050", StringComparison.Ordinal)
        );
        var sloping = BenchFiles.Reduce(
            Rods.Replace("FROM", "2.100", StringComparison.Ordinal).Replace("TO", "3.150", StringComparison.Ordinal)
        );
        // Second order in the slopes only: 1 % of slope changes the twist by less than 2 parts in 10,000.
        Assert.Equal(level.Dimension("a/b.twist")!.Si, sloping.Dimension("a/b.twist")!.Si, 2e-6);
    }

    [Fact]
    public void Spring_TwoLoads_RateAndFreeLength()
    {
        // 9.50 in under 200 lbf, 8.50 under 400: 200 lbf/in, free 10.50 in. 1 lbf/in = 175.126835 N/m (NIST SP 811: 1.751268 E+02).
        var spring = BenchFiles.Reduce(
            """{ "id": "s", "kind": "spring", "loads": [ { "load": "200 lbf", "length": "9.50" }, { "load": "400 lb", "length": "8.50" } ], "sigma": "0.02" }""",
            kind: "coil-spring"
        );
        Assert.Equal(200 * 175.1268, spring.Dimension("rate")!.Si, .1);
        Is(spring, "free-length", 10.5 * Inch);
        // u(slope) = √(u1² + u2²) / ΔF, lengths each with 1 % of load at the slope: u1² = .02² + (.01 x 1)², u2² = .02² + (.01 x 2)² in².
        var expected = 200 * Math.Sqrt((.0005 + .0008) / 1);
        Assert.Equal(expected, spring.Dimension("rate")!.U / 175.1268, .01);
    }

    [Fact]
    public void Spring_OneLoad_OrGrowing_IsAskedAbout()
    {
        Assert.Contains(
            "two different loads",
            BenchFiles.Reduce("""{ "id": "s", "kind": "spring", "loads": [ { "load": "200 lbf", "length": "9.5" } ] }""").Wanting[0],
            StringComparison.Ordinal
        );
        Assert.Contains(
            "grows",
            BenchFiles
                .Reduce(
                    """{ "id": "s", "kind": "spring", "loads": [ { "load": "200 N", "length": "9" }, { "load": "400 N", "length": "9.5" } ] }"""
                )
                .Wanting[0],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void RunOut_IsTheFullMovement() =>
        Is(
            BenchFiles.Reduce("""{ "id": "r", "kind": "run-out", "dimension": "run-out", "readings": ["0.002", "0.005", "-0.001"] }"""),
            "run-out",
            .006 * Inch
        );

    [Fact]
    public void Repeats_ScatteringMoreThanTheToolSays_AreDoubtedMore()
    {
        var calm = BenchFiles.Reduce(
            """{ "id": "m", "kind": "length", "dimension": "d", "values": ["1.000", "1.001", "0.999"], "sigma": "0.004" }"""
        );
        Is(calm, "d", Inch, .004 / Math.Sqrt(3) * Inch);
        var wild = BenchFiles.Reduce(
            """{ "id": "m", "kind": "length", "dimension": "d", "values": ["1.00", "1.03", "0.97"], "sigma": "0.004" }"""
        );
        Is(wild, "d", Inch, .03 / Math.Sqrt(3) * Inch);
    }

    [Fact]
    public void TwoMeasuresOfOneDimension_AreWeighedAndQuestionedWhenApart()
    {
        const string Two = """
            { "id": "a", "kind": "length", "dimension": "d", "values": ["1.000"], "sigma": "0.001" },
            { "id": "b", "kind": "length", "dimension": "d", "values": ["VALUE"], "sigma": "0.002" }
            """;
        // Weights 4 : 1, u = .001 x √(1/(1 + 1/4)) = .000894.
        var near = BenchFiles.Reduce(Two.Replace("VALUE", "1.005", StringComparison.Ordinal));
        Is(near, "d", 1.001 * Inch, .001 / Math.Sqrt(1.25) * Inch);
        Assert.Null(near.Dimension("d")!.Remark);
        Assert.Contains(
            "disagree",
            BenchFiles.Reduce(Two.Replace("VALUE", "1.05", StringComparison.Ordinal)).Dimension("d")!.Remark,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void WithdrawnMeasures_DoNotCount()
    {
        var part = BenchFiles.Reduce("""{ "id": "a", "kind": "length", "dimension": "d", "values": [1], "withdrawn": "slipped" }""");
        Assert.Empty(part.Dimensions);
    }

    [Fact]
    public void Angle_DegreesAndMinutes_AreRead()
    {
        var part = BenchFiles.Reduce("""{ "id": "a", "kind": "angle", "dimension": "included", "values": ["7 deg 30'", 7.5, "7.5°"] }""");
        Assert.Equal(7.5 * Degree, part.Dimension("included")!.Si, 1e-12);
    }

    private static void Is(Reduction reduction, string dimension, double si, double? u = null, double within = 1e-10)
    {
        var value = reduction.Dimension(dimension);
        Assert.NotNull(value);
        Assert.Equal(si, value.Si, within);
        if (u is { } expected)
        {
            Assert.Equal(expected, value.U, within);
        }
    }
}
