using System.Text;
using System.Text.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Tests.Car;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Press;

/// <summary>Press jobs in the car file, the schema and the journal.</summary>
public class PressFileTests
{
    private static string Full =>
        PressJobSamples
            .LowerArmAfter(3)
            .With(
                "\"set\": 0.02",
                "\"left\": \"0.17\", \"leftLater\": \"0.168\", \"load\": 1.25, \"dwell\": 20, \"signs\": [\"flaking\"], \"note\": \"old paint\""
            )
            .With("\"set\": 0.08", "\"set\": 0.08, \"withdrawn\": \"dial slipped\"")
            .With(
                "\"rightArm\": 4, \"travelAt\": \"part\" }",
                "\"rightArm\": \"4 1/8\", \"ram\": 5, \"lever\": 1.5, \"travelAt\": \"part\" }"
            )
            .With(
                "\"bites\": [{",
                "\"lines\": [ { \"name\": \"edge\", \"plane\": \"side\", \"from\": \"crown\", \"gaps\": [ { \"at\": 0, \"gap\": \"1/32\" } ] } ], \"winding\": [ { \"at\": 0, \"left\": 1, \"right\": \"1 1/64\", \"width\": 2 } ], \"note\": \"n\", \"bites\": [{"
            );

    [Fact]
    public void WriteThenRead_GivesTheSame()
    {
        var written = CarFileWriter.Write(Read(Full));
        Assert.Equal(
            Encoding.UTF8.GetString(written),
            Encoding.UTF8.GetString(CarFileWriter.Write(Read(Encoding.UTF8.GetString(written))))
        );
        Assert.Contains("\"4 1/8\"", Encoding.UTF8.GetString(written), StringComparison.Ordinal); // as typed
        Assert.True(IsValid(written));
    }

    [Fact]
    public void ImportThenFold_GivesTheSame()
    {
        var car = Read(Full);
        var entries = Fold.ActsOf(car)
            .Select(act => new JournalEntry(Guid.NewGuid(), DateTimeOffset.UnixEpoch, null, ThroughText(act, car)));
        Assert.Equal(Encoding.UTF8.GetString(CarFileWriter.Write(car)), Encoding.UTF8.GetString(CarFileWriter.Write(Fold.Of(entries))));
    }

    [Fact]
    public void DescribingAJobAnew_KeepsItsBites()
    {
        var car = Read(Full);
        var job = car.Press[0] with { Bites = [], CrackTests = [], Note = "changed" };
        Act[] acts = [.. Fold.ActsOf(car), new Act.PressJobDescribed(job), new Act.BiteWithdrawn("arm", "b1", "wrong part")];
        var folded = Fold.Of(acts.Select(a => new JournalEntry(Guid.NewGuid(), DateTimeOffset.UnixEpoch, null, a))).Press[0];
        Assert.Equal("changed", folded.Note);
        Assert.Equal(3, folded.Bites.Count);
        Assert.Equal("wrong part", folded.Bites[0].Withdrawn);
    }

    [Fact]
    public void AnActOfAJobThatIsNotThere_ChangesNothing()
    {
        var car = Read(Full);
        Act[] acts = [.. Fold.ActsOf(car), new Act.BiteMade("nobody", car.Press[0].Bites[0]), new Act.PressJobRemoved("arm")];
        Assert.Empty(Fold.Of(acts.Select(a => new JournalEntry(Guid.NewGuid(), DateTimeOffset.UnixEpoch, null, a))).Press);
    }

    [Theory]
    [InlineData("\"shape\": \"rectangle\"", "\"shape\": \"oval\"", "one of rectangle, round")]
    [InlineData("\"width\": \"1 1/4\"", "\"width\": null", "needs its width")]
    [InlineData("\"kind\": \"wishbone\"", "\"kind\": \"arm\"", "one of wishbone, bracket")]
    [InlineData("\"travel\": 0.13, \"set\": 0.00", "\"travel\": 0.13", "one of the two")]
    [InlineData("\"travel\": 0.13, \"set\": 0.00", "\"travel\": 0.13, \"set\": 0.00, \"left\": 0.1", "one of the two")]
    [InlineData("\"leftArm\": 4", "\"leftArm\": 0", "leftArm")]
    [InlineData("\"strain\": 0.05", "\"strain\": 0.5", "a number from 0 to 0.2")]
    [InlineData("\"id\": \"b2\"", "\"id\": \"b1\"", "more than one bite")]
    [InlineData("\"heated\": \"no\"", "\"heated\": false", "one of no, yes")]
    [InlineData("\"outBy\"", "\"outby\"", "not known here")]
    public void WhatIsWrong_IsToldWithItsPlace(string right, string wrong, string sentence)
    {
        var faults = PressFiles.FaultsOf(PressJobSamples.LowerArmAfter(2).With(right, wrong));
        Assert.Contains(faults, f => f.Contains(sentence, StringComparison.Ordinal) && f.StartsWith("press[0]", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"shape\": \"rectangle\"", "\"shape\": \"oval\"")]
    [InlineData("\"width\": \"1 1/4\"", "\"breadth\": 1")]
    [InlineData("\"kind\": \"wishbone\"", "\"kind\": \"arm\"")]
    [InlineData("\"travel\": 0.13, \"set\": 0.00", "\"travel\": 0.13")]
    [InlineData("\"heated\": \"no\"", "\"heated\": false")]
    [InlineData("\"outBy\"", "\"outby\"")]
    public void TheSchema_RefusesTheSame(string right, string wrong) =>
        Assert.False(IsValid(PressJobSamples.LowerArmAfter(2).With(right, wrong).Utf8()));

    private static Act ThroughText(Act act, CarFile car)
    {
        var faults = new Faults();
        var read = ActJson.Read(ActJson.Write(act, car.Units), faults);
        Assert.Empty(faults);
        return read!;
    }

    private static bool IsValid(byte[] bytes)
    {
        using var document = JsonDocument.Parse(bytes);
        return Car.CarSchemaTests.Schema.Evaluate(document.RootElement).IsValid;
    }

    private static CarFile Read(string text) =>
        CarFileReader.Read(text.Utf8()).Match(file => file, faults => throw new InvalidOperationException(string.Join('\n', faults)));
}
