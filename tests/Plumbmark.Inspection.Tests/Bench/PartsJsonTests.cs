using System.Text;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Tests.Bench;

/// <summary>The parts section: what is refused, in which words; what is kept as typed. Round trips are laws of the whole car file.</summary>
public class PartsJsonTests
{
    private const string Right = """
        { "id": "p", "kind": "lower-wishbone", "made": "pressed", "condition": ["corroded"], "crackTest": "dye-clear", "mirror": "q",
          "card": { "name": "left arm", "numbers": [ { "number": "51-0417", "how": "cast" } ], "source": "box 3", "history": ["bought 1998"] },
          "limits": [ { "dimension": "flange", "within": "1/32" } ],
          "measures": [
            { "id": "a", "kind": "bore", "bore": "eye", "mouth": [".7535", ".7515"], "pin": "0.748" },
            { "id": "b", "kind": "centres", "from": "eye", "to": "ball", "values": ["9 1/8"], "over": "inside" },
            { "id": "c", "kind": "straightedge", "dimension": "flange", "gaps": [ { "at": 0, "gap": 0 }, { "at": 5, "sheets": 2 }, { "at": 9, "goes": ".004", "stops": ".005" } ] },
            { "id": "d", "kind": "rods", "from": "eye", "to": "ball", "span": 6, "near": 9, "far": 9 },
            { "id": "e", "kind": "spring", "loads": [ { "load": "200 lbf", "length": 9 } ] },
            { "id": "f", "kind": "angle", "dimension": "lean", "values": ["7 deg 30'"] } ] }
        """;

    [Fact]
    public void Read_ARightPart_KeepsEverythingAsTyped()
    {
        var part = BenchFiles.Car(Right).Parts.Items[0];
        Assert.Equal("9 1/8", Assert.IsType<Measure.Centres>(part.Measures[1]).Values[0].AsTyped);
        Assert.Equal(2, Assert.IsType<Measure.Straightedge>(part.Measures[2]).Gaps[1].Sheets);
        Assert.Equal(.2, Assert.IsType<Measure.Straightedge>(part.Measures[2]).Gaps[1].Goes.Millimetres);
        Assert.Equal(7.5m, Assert.IsType<Measure.Angle>(part.Measures[5]).Degrees[0].Degrees);
        Assert.True(part.Is(PartCondition.Corroded));
        Assert.Equal("box 3", part.Card.Source);
    }

    [Theory]
    [InlineData("\"kind\": \"lower-wishbone\"", "\"kind\": \"lower arm\"", "one of lower-wishbone, upper-wishbone, upright")]
    [InlineData("\"corroded\"", "\"rusty\"", "Found the text \"rusty\"; one of cracked, kinked, corroded")]
    [InlineData("[\".7535\", \".7515\"]", "[\".7535\"]", "measures[0].mouth (line 6, column 58): Found a list of 1; 2 are needed here.")]
    [InlineData("\"pin\": \"0.748\"", "\"pin\": 1, \"bush\": 1", "either pin (what turns in it) or bush")]
    [InlineData("\"over\": \"inside\"", "\"over\": \"edges\"", "one of centre, inside, outside")]
    [InlineData("\"to\": \"ball\", \"values\"", "\"to\": \"eye\", \"values\"", "Both ends are \"eye\"")]
    [InlineData("\"sheets\": 2", "\"sheets\": 2, \"gap\": 1", "A gap is told in one of three ways")]
    [InlineData("\"goes\": \".004\"", "\"goes\": \".006\"", "A gap is told in one of three ways")]
    [InlineData("\"near\": 9, \"far\": 9", "\"near\": 9", "Rods need near and far")]
    [InlineData("\"load\": \"200 lbf\"", "\"load\": 200", "a load with its unit is needed here, such as \"200 lbf\"")]
    [InlineData("\"7 deg 30'\"", "\"steep\"", "an angle is needed here")]
    [InlineData("\"mirror\": \"q\"", "\"mirror\": \"p\"", "is its own mirror")]
    [InlineData("\"id\": \"b\"", "\"id\": \"a\"", "The id \"a\" is already used on line 6")]
    [InlineData("\"within\": \"1/32\"", "\"within\": 0", "A limit is greater than zero")]
    [InlineData("\"source\": \"box 3\"", "\"souce\": \"box 3\"", "The field \"souce\" is not known here")]
    [InlineData("\"kind\": \"rods\"", "\"kind\": \"sticks\"", "one of length, angle, bore, centres, heights, straightedge, rods")]
    public void Read_ASpoiledPart_SaysWhereAndWhatIsAllowed(string right, string wrong, string expected)
    {
        Assert.Contains(right, Right, StringComparison.Ordinal);
        Assert.Contains(
            expected,
            string.Join('\n', BenchFiles.Faults(Right.Replace(right, wrong, StringComparison.Ordinal))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Read_PartnersOfDifferentKinds_AreRefused() =>
        Assert.Contains(
            "partners are of one kind",
            BenchFiles.Faults("""{ "id": "a", "kind": "upright", "mirror": "b" }, { "id": "b", "kind": "bush" }""")[0],
            StringComparison.Ordinal
        );

    [Fact]
    public void Read_VariantWithWrongSerialOrTolerance_IsRefused()
    {
        var faults = BenchFiles.Faults(
            "",
            """
            { "id": "v", "kind": "upright", "serials": { "from": "the first" },
              "dimensions": [ { "dimension": "lean", "nominal": "7.5 deg", "tolerance": "1/32" } ] }
            """
        );
        Assert.Contains(faults, f => f.Contains("a serial number is needed here", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.Contains("of the same sort as the nominal", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"corroded\"", "\"rusty\"")]
    [InlineData("[\".7535\", \".7515\"]", "[\".7535\"]")]
    [InlineData("\"over\": \"inside\"", "\"over\": \"edges\"")]
    [InlineData("\"sheets\": 2", "\"sheets\": 2, \"gap\": 1")]
    [InlineData("\"load\": \"200 lbf\"", "\"load\": 200")]
    [InlineData("\"source\": \"box 3\"", "\"souce\": \"box 3\"")]
    [InlineData("\"dimension\": \"lean\"", "\"bore\": \"lean\"")]
    [InlineData("\"span\": 6", "\"spam\": 6")]
    public void Schema_RefusesWhatTheReaderRefuses(string right, string wrong)
    {
        Assert.True(IsValid(Right));
        Assert.False(IsValid(Right.Replace(right, wrong, StringComparison.Ordinal)));
        Assert.NotEmpty(BenchFiles.Faults(Right.Replace(right, wrong, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("TX 04800", "TX 5000", true)]
    [InlineData("TX 04800", "tx4799", false)]
    [InlineData("TX 04800", "TX-04800-B", true)]
    [InlineData("TX 04800", "t.x. 4800", true)]
    [InlineData("TX 04800", "GB 5000", null)]
    [InlineData("TX 04800", "5000", null)]
    [InlineData("TX 04800", "unknown", null)]
    [InlineData("TX 04800", null, null)]
    [InlineData("12", "13", true)]
    public void Type_IsFittedOnlyWhereNumbersCanBeCompared(string from, string? serial, bool? expected)
    {
        var type = new PartVariant("t", PartKind.SteeringLever, "late", new SerialRange(SerialNumber.Read(from), null));
        Assert.Equal(expected, type.IsFittedTo(SerialNumber.Read(serial)));
    }

    [Theory]
    [InlineData("left", true)]
    [InlineData("510417", true)]
    [InlineData("51 0417", true)]
    [InlineData("wishbone", true)]
    [InlineData("", true)]
    [InlineData("51-0533", false)]
    public void Find_ByNumberOrName(string text, bool found) => Assert.Equal(found, BenchFiles.Car(Right).Parts.Find(text).Any());

    private static bool IsValid(string part)
    {
        var text = $$"""{ "format": "plumbmark-car", "version": 1, "units": "in", "parts": { "items": [ {{part}} ] } }""";
        using var document = System.Text.Json.JsonDocument.Parse(Encoding.UTF8.GetBytes(text));
        return Car.CarSchemaTests.Schema.Evaluate(document.RootElement).IsValid;
    }
}
