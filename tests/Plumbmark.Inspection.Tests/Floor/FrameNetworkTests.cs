using System.Text;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;

namespace Plumbmark.Inspection.Tests.Floor;

/// <summary>From the car file to the network: whose error is whose.</summary>
public class FrameNetworkTests
{
    private static CarFile Car(
        string tools,
        string readings,
        string points =
            """{ "id": "A.L", "mirror": "A.R", "sketch": [60, 12, 0] }, { "id": "A.R", "sketch": [60, -12, 0] }, { "id": "B.L", "sketch": [0, 12, 0] }"""
    ) =>
        CarFileReader
            .Read(
                Encoding.UTF8.GetBytes(
                    $$"""{ "format": "plumbmark-car", "version": 1, "units": "in", "tools": [{{tools}}], "frame": { "points": [{{points}}] }, "readings": [{{readings}}] }"""
                )
            )
            .Match(c => c, f => throw new InvalidOperationException(string.Join("\n", f)));

    private const string Tape = """{ "id": "tape", "kind": "tape", "class": "II", "division": "1/16" }""";

    [Fact]
    public void ATape_SharesZeroAndScaleAndHasTwoEndsAndARounding()
    {
        var network = FrameNetwork
            .Of(
                Car(
                    Tape,
                    """{ "id": "r1", "kind": "plan", "from": "A.L", "to": "B.L", "value": "61 3/16", "tool": "tape", "startAt": "10" }"""
                )
            )
            .Network;
        var plan = Assert.IsType<Observation.PlanDistance>(Assert.Single(network.Observations));
        Assert.Equal(51.1875 * 0.0254, plan.ValueMetres, 1e-12);
        Assert.Equal("tape", plan.Tool);
        Assert.Equal(Math.Sqrt(Math.Pow(0.0254 / 16, 2) / 12 + 2 * 0.0005 * 0.0005), plan.SigmaMetres, 1e-12);

        // Directive 2014/32/EU, Annex X: class II is 0.3 mm + 0.2 mm/m, taken as rectangular.
        var tool = Assert.Single(network.Tools);
        Assert.Equal(0.0003 / Math.Sqrt(3), tool.ZeroSigmaMetres, 1e-12);
        Assert.Equal(0.0002 / Math.Sqrt(3), tool.ScaleSigma, 1e-12);
        Assert.Equal(new MirrorPair("A.L", "A.R"), Assert.Single(network.MirrorPairs));
    }

    [Fact]
    public void AReadingWithItsOwnSigma_IsUsedAsItIs()
    {
        var network = FrameNetwork
            .Of(Car(Tape, """{ "id": "r1", "kind": "plan", "from": "A.L", "to": "B.L", "value": "60", "tool": "tape", "sigma": "1 mm" }"""))
            .Network;
        var plan = Assert.Single(network.Observations);
        Assert.Null(plan.Tool);
        Assert.Equal(0.001, plan.SigmaMetres, 1e-15);
        Assert.Empty(network.Tools);
    }

    [Fact]
    public void ALevel_SharesNothing()
    {
        var network = FrameNetwork
            .Of(
                Car(
                    """{ "id": "level", "kind": "level", "division": "1 mm" }""",
                    """{ "id": "r1", "kind": "height", "point": "A.L", "value": "13 1/16", "tool": "level" }"""
                )
            )
            .Network;
        var height = Assert.Single(network.Observations);
        Assert.Null(height.Tool);
        Assert.Equal(Math.Sqrt(1e-6 / 12 + 0.0005 * 0.0005), height.SigmaMetres, 1e-12);
    }

    [Fact]
    public void RepeatsOfATool_BringItsSpreadUpToDate()
    {
        var readings = string.Join(
            ",",
            Enumerable
                .Range(0, 9)
                .Select(i =>
                    $$"""{ "id": "r{{i}}", "kind": "plan", "from": "A.L", "to": "B.L", "value": "{{1500 + i % 3 * 3}} mm", "tool": "tape" }"""
                )
        );
        var network = FrameNetwork.Of(Car(Tape, readings));
        var spread = Assert.Single(network.Spreads);
        Assert.Equal(8, spread.Repeats!.DegreesOfFreedom);
        Assert.Equal(16, spread.Used.DegreesOfFreedom);
        Assert.Equal(Math.Sqrt((8 * Math.Pow(spread.AssumedMetres, 2) + 54e-6) / 16), network.Network.Observations[0].SigmaMetres, 1e-12);
    }

    [Fact]
    public void RepeatedDrops_BringTheDropUpToDateExceptWhereThePointStatesIt()
    {
        var points = """{ "id": "A.L", "sketch": [60, 12, 0] }, { "id": "B.L", "sketch": [0, 12, 0], "dropSigma": 0 }""";
        var network = FrameNetwork.Of(
            Car(
                Tape,
                """{ "id": "r1", "kind": "plan", "from": "A.L", "to": "B.L", "value": 60, "tool": "tape" }, { "id": "d", "kind": "drop", "point": "A.L", "dx": "2 mm", "dy": "0 mm" }""",
                points
            )
        );
        Assert.Equal(2, network.DropRepeats!.DegreesOfFreedom);
        Assert.Equal(0.001, network.DropRepeats.StandardDeviation, 1e-12);
        Assert.Equal(Math.Sqrt((8 * 0.25 + 2 * 1.0) / 10) * 1e-3, network.Network.Points[0].DropSigmaMetres, 1e-12);
        Assert.Equal(0, network.Network.Points[1].DropSigmaMetres);
    }

    [Fact]
    public void AWithdrawnReading_IsNotObserved() =>
        Assert.Empty(
            FrameNetwork
                .Of(Car(Tape, """{ "id": "r1", "kind": "plan", "from": "A.L", "to": "B.L", "value": 60, "withdrawn": "wrong mark" }"""))
                .Network.Observations
        );

    [Fact]
    public void NothingToFit_IsRefusedInASentence()
    {
        var answer = AdjustAnswer.Of(Car(Tape, ""));
        Assert.Equal(["There is no reading yet that places a point."], AdjustAnswerJson.Remarks(answer));
    }

    [Fact]
    public void AFloatingPoint_IsNamedWithWhatWouldTieIt()
    {
        string Plan(string a, string b, int mm) =>
            $$"""{ "id": "{{a}}{{b}}", "kind": "plan", "from": "{{a}}", "to": "{{b}}", "value": "{{mm}} mm" }""";
        var points = string.Join(
            ",",
            new[] { ("A", 0, 0), ("B", 1000, 0), ("C", 0, 1000), ("D", 1500, 900) }.Select(p =>
                $$"""{ "id": "{{p.Item1}}", "sketch": ["{{p.Item2}} mm", "{{p.Item3}} mm", 0] }"""
            )
        );
        var car = Car(
            Tape,
            string.Join(",", Plan("A", "B", 1000), Plan("A", "C", 1000), Plan("B", "C", 1414), Plan("B", "D", 1030)),
            points
        );
        var sentence = AdjustAnswerJson.Remarks(AdjustAnswer.Of(car))[0];
        Assert.StartsWith(
            "Nothing ties D to the rest; where it is stays open. To tie it, measure the plan length D to ",
            sentence,
            StringComparison.Ordinal
        );
    }
}
