using System.Text;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Tests.Car;

public class CarFileReaderTests
{
    /// <summary>A small file that is right; the refusals below are made by spoiling it.</summary>
    public const string Right = """
        { "format": "plumbmark-car", "version": 1, "units": "in",
          "car":    { "name": "Shed find", "serial": "TX 00417" },
          "tools":  [ { "id": "tape", "kind": "tape", "class": "II", "division": "1/16" } ],
          "frame":  { "points": [
              { "id": "A.L", "mirror": "A.R", "role": "suspension", "sketch": [60, 12, 0], "nominal": [60, null, 3.5] },
              { "id": "A.R", "mirror": "A.L", "dropSigma": 0 } ],
            "limits": { "mirror": "1/8", "height": "1/8", "point": "1/8", "source": "practice" } },
          "readings": [
            { "id": "r1", "kind": "plan", "from": "A.L", "to": "A.R", "value": "61 3/16", "tool": "tape", "startAt": "10" },
            { "id": "r2", "kind": "height", "point": "A.L", "value": "13 1/16", "tool": "level" },
            { "id": "r3", "kind": "drop", "point": "A.L", "dx": "0.5 mm", "dy": "-0.5 mm" } ] }
        """;

    [Fact]
    public void Read_ARightFile_KeepsEveryFieldAndEveryLengthAsTyped()
    {
        var car = Assert.IsType<CarFileOutcome.Accepted>(Read(Right)).File;
        Assert.Equal("TX 00417", car.Car.Serial);
        var plan = Assert.IsType<Reading.Plan>(car.Readings[0]);
        Assert.Equal("61 3/16", plan.Value.AsTyped);
        Assert.Equal(61.1875, plan.Value.Inches);
        Assert.Equal(10, plan.StartAt!.Value.Inches);
        Assert.Equal(-0.5, Assert.IsType<Reading.Drop>(car.Readings[2]).Dy!.Value.Millimetres);
        Assert.Null(car.Frame.Points[0].Nominal!.Y);
        Assert.Equal(0, car.Frame.Points[1].DropSigma!.Value.Millimetres);
        Assert.Null(car.Frame.Points[0].DropSigma);
    }

    [Fact]
    public void Read_AToolThatIsNotDescribed_IsAToolOfUsualAccuracy()
    {
        var car = Assert.IsType<CarFileOutcome.Accepted>(Read(Right)).File;
        Assert.Equal("level", car.Readings[1].Tool);
        Assert.DoesNotContain(car.Tools, t => t.Id == "level");
    }

    [Theory]
    [InlineData("\"version\": 1", "\"version\": 2", "version (line 1, column 41): Found the number 2; 1 is needed here.")]
    [InlineData(
        "\"units\": \"in\"",
        "\"units\": \"ft\"",
        "units (line 1, column 53): Found the text \"ft\"; one of in, mm is needed here."
    )]
    [InlineData("\"role\": \"suspension\"", "\"roll\": 3", "The field \"roll\" is not known here; known are id, mirror, role")]
    [InlineData("\"61 3/16\"", "\"61 3/0\"", "readings[0].value (line 9, column 72)")]
    [InlineData("\"61 3/16\"", "NaN", "line 9, column 72: This is not JSON")]
    [InlineData("\"61 3/16\"", "-61", "a length greater than zero is needed here")]
    [InlineData("\"61 3/16\"", "true", "Found true; a length is needed here")]
    [InlineData("\"to\": \"A.R\"", "\"to\": \"B.R\"", "Reading \"r1\" goes to \"B.R\", which is not among the points; known are A.L, A.R.")]
    [InlineData("\"to\": \"A.R\"", "\"to\": \"A.L\"", "Both ends are \"A.L\"")]
    [InlineData("\"r2\"", "\"r1\"", "The id \"r1\" is already used on line 9")]
    [InlineData("\"id\": \"A.R\", \"mirror\"", "\"id\": \"A.L\", \"mirror\"", "The id \"A.L\" is already used on line 5")]
    [InlineData("\"startAt\": \"10\"", "\"startAt\": \"70\"", "the start must be less than what the tape shows")]
    [InlineData("[60, 12, 0]", "[60, 12]", "Found a list of 2; a list of three is needed")]
    [InlineData(
        "\"height\", \"point\"",
        "\"tall\", \"point\"",
        "Found the text \"tall\"; one of plan, direct, height, rise, offset, drop, indirect is needed here."
    )]
    [InlineData(", \"dy\": \"-0.5 mm\"", "", "needs either value (distance of the new mark from the first) or both dx and dy")]
    [InlineData("\"kind\": \"tape\"", "\"kind\": \"tape\", \"kind\": \"tape\"", "The field \"kind\" is given twice")]
    [InlineData("\"mirror\": \"A.R\"", "\"mirror\": \"A.L\"", "is its own mirror")]
    [InlineData("\"plumbmark-car\"", "\"other\"", "\"plumbmark-car\" is needed here")]
    public void Read_ASpoiledFile_SaysWhereAndWhatIsAllowed(string right, string wrong, string expected)
    {
        Assert.Contains(right, Right, StringComparison.Ordinal);
        var refused = Assert.IsType<CarFileOutcome.Refused>(Read(ReplaceFirst(Right, right, wrong)));
        Assert.Contains(expected, string.Join('\n', refused.Faults), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SeveralFaults_TellsAllInTheOrderOfTheFile()
    {
        var spoiled = Right
            .Replace("\"61 3/16\"", "\"61 9/8\"", StringComparison.Ordinal)
            .Replace("\"13 1/16\"", "[]", StringComparison.Ordinal)
            .Replace("\"II\"", "\"IV\"", StringComparison.Ordinal);
        var refused = Assert.IsType<CarFileOutcome.Refused>(Read(spoiled));
        Assert.Equal(["tools[0].class", "readings[0].value", "readings[1].value"], refused.Faults.Select(f => f.Path));
    }

    [Fact]
    public void Read_AnUnknownFieldBesideAFaultyValue_IsToldToo()
    {
        var refused = Assert.IsType<CarFileOutcome.Refused>(
            Read(Right.Replace("\"61 3/16\"", "\"5/0\", \"colour\": 1", StringComparison.Ordinal))
        );
        Assert.Equal(["readings[0].value", "readings[0].colour"], refused.Faults.Select(f => f.Path));
    }

    [Fact]
    public void Read_ADuplicateIdAndAMissingPointBesideAFaultyValue_AreToldToo()
    {
        var spoiled = Right
            .Replace("\"61 3/16\"", "\"5/0\"", StringComparison.Ordinal)
            .Replace("\"to\": \"A.R\"", "\"to\": \"Z.R\"", StringComparison.Ordinal)
            .Replace("\"13 1/16\"", "\"13 9/8\"", StringComparison.Ordinal)
            .Replace("\"r2\"", "\"r1\"", StringComparison.Ordinal);
        var faults = Assert.IsType<CarFileOutcome.Refused>(Read(spoiled)).Faults;
        Assert.Equal(
            ["readings[0]", "readings[0].value", "readings[1]", "readings[1].value"],
            faults.Select(f => f.Path).Order(StringComparer.Ordinal)
        );
        Assert.Contains(faults, f => f.Sentence.Contains("\"Z.R\", which is not among the points", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.Sentence.Contains("\"r1\" is already used on line 9", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_APointWithAFault_IsStillAPoint()
    {
        // Its readings and its partner are not told to go to a point that is not there.
        var spoiled = Right.Replace("[60, 12, 0]", "[60, \"5/0\", 0]", StringComparison.Ordinal);
        Assert.Equal("frame.points[0].sketch[1]", Assert.Single(Assert.IsType<CarFileOutcome.Refused>(Read(spoiled)).Faults).Path);
    }

    [Theory]
    [InlineData(""" "way": "offset", "from": "A.L", "dx": "5/0", "dy": "x" """, "dx", "dy")]
    [InlineData(""" "way": "edge", "from": "A.L", "value": "5/0", "edge": "under" """, "edge", "value")]
    [InlineData(""" "way": "bar", "from": "A.L", "value": "5/0" """, "", "value")]
    public void Read_AnIndirectDropWithTwoFaults_TellsBoth(string way, params string[] places)
    {
        var spoiled = Right.Replace(
            "\"kind\": \"height\", \"point\": \"A.L\", \"value\": \"13 1/16\"",
            $"\"kind\": \"indirect\", \"point\": \"A.R\", {way}",
            StringComparison.Ordinal
        );
        var faults = Assert.IsType<CarFileOutcome.Refused>(Read(spoiled)).Faults;
        Assert.Equal(
            places.Select(p => p.Length == 0 ? "readings[1]" : $"readings[1].{p}"),
            faults.Select(f => f.Path).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Read_AReadingWithoutKind_IsOneFault()
    {
        var refused = Assert.IsType<CarFileOutcome.Refused>(Read(ReplaceFirst(Right, "\"kind\": \"plan\", ", "")));
        Assert.Contains("\"kind\" is missing", Assert.Single(refused.Faults).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("points", 200)]
    [InlineData("readings", 4000)]
    public void Read_MoreThanCanBeWorkedOut_IsRefused_BySchemaToo(string what, int most)
    {
        foreach (var count in (int[])[most, most + 1])
        {
            var points = string.Join(
                ',',
                Enumerable.Range(0, what == "points" ? count : 2).Select(i => $"{{\"id\": \"P{i}\", \"role\": \"other\"}}")
            );
            var readings = string.Join(
                ',',
                Enumerable
                    .Range(0, what == "readings" ? count : 1)
                    .Select(i => $"{{\"id\": \"r{i}\", \"kind\": \"height\", \"point\": \"P1\", \"value\": \"1 mm\"}}")
            );
            var file = Encoding.UTF8.GetBytes(
                $"{{\"format\": \"plumbmark-car\", \"version\": 1, \"units\": \"mm\", \"frame\": {{\"points\": [{points}]}}, \"readings\": [{readings}]}}"
            );
            var told = CarFileReader.Read(file).Match(_ => "", faults => Assert.Single(faults).Sentence);
            Assert.Equal(count > most ? $"There are {count} {what}; a car file may have at most {most}." : "", told);
            Assert.Equal(count <= most, CarSchemaTests.IsValid(file));
        }
    }

    [Fact]
    public void Read_TenMegabytesOfJunk_IsRefusedQuickly()
    {
        var junk = new byte[10 * 1024 * 1024];
        new Random(7).NextBytes(junk);
        Assert.Contains(
            "may have at most 8 MB",
            Assert.IsType<CarFileOutcome.Refused>(CarFileReader.Read(junk)).Faults[0].Sentence,
            StringComparison.Ordinal
        );
        Assert.IsType<CarFileOutcome.Refused>(CarFileReader.Read(junk.AsSpan(0, 7 * 1024 * 1024)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("[]")]
    [InlineData("3")]
    [InlineData("null")]
    [InlineData("{")]
    [InlineData("{} {}")]
    public void Read_NotACar_IsRefused(string text) => Assert.NotEmpty(Assert.IsType<CarFileOutcome.Refused>(Read(text)).Faults);

    [Fact]
    public void Read_DeepNesting_IsRefused() => Assert.IsType<CarFileOutcome.Refused>(Read(new string('[', 100_000)));

    private static CarFileOutcome Read(string text) => CarFileReader.Read(Encoding.UTF8.GetBytes(text));

    private static string ReplaceFirst(string text, string from, string to)
    {
        var at = text.IndexOf(from, StringComparison.Ordinal);
        return text[..at] + to + text[(at + from.Length)..];
    }
}
