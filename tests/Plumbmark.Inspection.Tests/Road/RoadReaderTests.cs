using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Tests.Road;

public class RoadReaderTests
{
    private const string Right = """
        { "format": "plumbmark-car", "version": 1, "units": "in",
          "frame": { "points": [ { "id": "W.L" }, { "id": "W.R" } ] },
          "road": {
            "front": { "upperFront": "W", "upperRear": [1, 13, 16], "camber": "0°30'", "upperArm": "one piece" },
            "rear": { "kind": "liveAxle", "eyeToAxle": 20, "track": 48 },
            "book": [ { "figure": "camber", "value": 0.5, "limit": "30'", "source": "factory" },
                      { "figure": "toeIn", "value": "1/16", "limit": "1/16", "diameter": 16 },
                      { "figure": "wheelbase", "value": 88, "limit": "1/8" } ],
            "parts": [ { "id": "p1", "part": "lever", "side": "R", "up": "0.22", "sigma": "0.01" } ],
            "adjusters": [ { "id": "s1", "kind": "shims", "side": "L", "at": ["upperFront"], "direction": "in", "most": "1/4", "step": "1/32" } ],
            "wheels": [ { "id": "w1", "kind": "plumbLine", "wheel": "FL", "top": "1", "bottom": "1 1/8", "span": 15 },
                        { "id": "w2", "kind": "swing", "wheel": "FR", "ahead": 0, "outTurn": 20, "outCamber": "1°", "inTurn": 20, "inCamber": -1 } ]
          } }
        """;

    [Fact]
    public void Read_TheRightExample_KeepsEverything()
    {
        var road = CarFileReader
            .Read(Encoding.UTF8.GetBytes(Right))
            .Match(f => f.Road!, f => throw new InvalidOperationException(string.Join('\n', f)));
        Assert.Equal(30, (double)road.Front!.Camber!.Value.Minutes);
        Assert.Equal("W.R", Assert.IsType<PickUp.AtPair>(road.Front.UpperFront).PointOn(Side.Right));
        Assert.Equal(0.22 * 0.0254, road.Parts[0].Amounts[0].Si, 1e-12);
        // 1/16 in at 16 in, total: 0.2238 degrees (own computation).
        Assert.Equal(0.223812, road.Book[1].Value!.Si * 180 / Math.PI, 1e-6);
        Assert.Equal(0, road.Book[1].LeastSi!.Value, 1e-12);
        Assert.Equal(2, road.Wheels.Count);
    }

    [Theory]
    [InlineData("\"upperFront\": \"W\"", "\"upperFront\": \"V\"", "The pair \"V\" needs the points V.L and V.R")]
    [InlineData("\"camber\": \"0°30'\"", "\"camber\": \"0°70'\"", "an angle of -60 to 60 degrees is needed")]
    [InlineData("\"camber\": \"0°30'\"", "\"camber\": 61", "an angle of -60 to 60 degrees is needed")]
    [InlineData("\"one piece\"", "\"two pieces\"", "one of two halves, one piece is needed")]
    [InlineData("\"liveAxle\"", "\"beam\"", "one of liveAxle, trailingArms is needed")]
    [InlineData("\"limit\": \"30'\"", "\"limit\": \"30'\", \"least\": 0", "Give either limit")]
    [InlineData("\"diameter\": 16", "\"diameter\": \"1/32\"", "is no toe")]
    [InlineData("\"up\": \"0.22\"", "\"reach\": \"0.22\"", "The field \"reach\" is not known here")]
    [InlineData("\"up\": \"0.22\", ", "", "No amount is given; give at least one of forward, out, up")]
    [InlineData("[\"upperFront\"]", "[\"upperArm\"]", "one of upperFront, upperRear, lowerFront, lowerRear, trackRodInner is needed")]
    [InlineData("\"most\": \"1/4\"", "\"least\": 1, \"most\": \"1/4\"", "The least, 1, is more than the most, 1/4.")]
    [InlineData("\"bottom\": \"1 1/8\"", "\"bottom\": \"11 1/8\"", "no wheel stands so")]
    [InlineData("\"wheel\": \"FR\"", "\"wheel\": \"RR\"", "Castor is read at a front wheel")]
    [InlineData("\"outTurn\": 20", "\"outTurn\": 0", "The wheel was not turned")]
    [InlineData("\"id\": \"w2\"", "\"id\": \"w1\"", "is already used on line")]
    [InlineData(
        "\"plumbLine\"",
        "\"plumb\"",
        "one of plumbLine, level, stringGaps, strings, across, swing, rideHeight, wheelbase, pad is needed"
    )]
    public void Read_AWrongSection_SaysWhatIsAllowed(string right, string wrong, string sentence)
    {
        Assert.Contains(right, Right, StringComparison.Ordinal);
        var bytes = Encoding.UTF8.GetBytes(Right.Replace(right, wrong, StringComparison.Ordinal));
        var faults = CarFileReader.Read(bytes).Match(_ => throw new InvalidOperationException("accepted"), f => f);
        Assert.Contains(faults, f => f.ToString().Contains(sentence, StringComparison.Ordinal));
        Assert.All(faults, f => Assert.True(f.Line > 1));
    }

    [Theory]
    [InlineData("1.5", 90)]
    [InlineData("1 1/2", 90)]
    [InlineData("1½°", 90)]
    [InlineData("1°30'", 90)]
    [InlineData("1° 30′", 90)]
    [InlineData("1 30", 90)]
    [InlineData("1 deg 30 min", 90)]
    [InlineData("-0°15'", -15)]
    [InlineData("−0° 15'", -15)]
    [InlineData("30'", 30)]
    [InlineData("30 min", 30)]
    [InlineData("1/2", 30)]
    [InlineData("+2", 120)]
    public void Angle_IsReadAsPeopleWriteIt(string text, double minutes)
    {
        Assert.True(Angle.TryParse(text, out var angle));
        Assert.Equal(minutes, (double)angle.Minutes);
        Assert.Equal(text, angle.AsTyped);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1,5")]
    [InlineData("1°60'")]
    [InlineData("1/0")]
    [InlineData("one")]
    [InlineData("1''")]
    [InlineData("99999999999999999999999999999999999")]
    public void Angle_ThatCouldMeanAnything_IsRefused(string text) => Assert.False(Angle.TryParse(text, out _));
}
