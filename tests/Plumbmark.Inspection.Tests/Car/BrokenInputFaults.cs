using Plumbmark.Testing.Fuzzing;

namespace Plumbmark.Inspection.Tests.Car;

/// <summary>
/// Every parser with broken input: never an unhandled error, never slow, always a sentence that can be printed, and what is accepted can be written and read again.
/// A short run; bench/reliability does a million for each.
/// </summary>
public sealed class BrokenInputFaults
{
    public static TheoryData<string> Parsers => [.. FuzzSubjects.All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Parsers))]
    public void BrokenInput_IsAcceptedWholeOrRefusedInASentence(string parser)
    {
        var outcome = FuzzRun.Run(FuzzSubjects.Named(parser), inputs: 1500, seed: 7);
        Assert.Empty(outcome.Findings.Select(f => $"{f.Key}: {Convert.ToBase64String(f.Value)}"));
        Assert.True(outcome.Accepted < outcome.Inputs, "Everything was accepted: the inputs are not broken.");
    }

    // The fuzzer would be worth nothing if it could not fail.
    [Fact]
    public void AParserThatBreaks_IsFound()
    {
        var breaks = new FuzzSubject(
            "breaks",
            [
                [1, 2, 3],
            ],
            [],
            bytes => bytes.Contains((byte)0) ? throw new FormatException() : (true, null)
        );
        Assert.StartsWith(
            "FormatException",
            Assert.Single(FuzzRun.Run(breaks, inputs: 2000, seed: 1).Findings).Key,
            StringComparison.Ordinal
        );
    }

    // Found by the bench: an angle in minutes that do not divide was written with more digits than are read, so that it could not be kept.
    [Theory]
    [InlineData("7 deg 32'")]
    [InlineData("0°20'")]
    [InlineData("-1° 59.999999'")]
    public void AnAngleInMinutes_ReadsBack(string text)
    {
        var angle = Plumbmark.Inspection.Bench.AmountText.ReadAngle(text)!;
        Assert.Equal(angle, Plumbmark.Inspection.Bench.AmountText.ReadAngle(Plumbmark.Inspection.Bench.AmountText.Write(angle)));
    }

    // Found by the bench: written as a number it came back as "0", or rounded to 28 digits, or to nothing.
    [Theory]
    [InlineData("-0")]
    [InlineData("2147483830.000000000000000000000000001")]
    [InlineData("0.000000000000000000000000000000001")]
    public void ALengthWithNoNumberOfItsKind_StaysAText(string typed)
    {
        var json = $$"""
            {"format":"plumbmark-car","version":1,"units":"in","car":{"name":"a"},"readings":[{"id":"r","kind":"height","point":"A","value":"{{typed}}"}],
             "frame":{"points":[{"id":"A"}]} }
            """;
        var car = Inspection
            .Car.CarFileReader.Read(System.Text.Encoding.UTF8.GetBytes(json))
            .Match(c => c, f => throw new FormatException(f[0].ToString()));
        var written = Inspection.Car.CarFileWriter.Write(car);
        var again = Inspection.Car.CarFileReader.Read(written).Match(c => c, f => throw new FormatException(f[0].ToString()));
        Assert.Equal(typed, Assert.IsType<Inspection.Car.Reading.Height>(again.Readings[0]).Value.AsTyped);
        Assert.Equal(written, Inspection.Car.CarFileWriter.Write(again));
    }

    // Found by the bench: what stood in a file went into the sentence as it was, with its line ends, NULs, half characters and 4,000 characters of one name.
    [Theory]
    [InlineData("{\"a\\u0000b\": 1}")]
    [InlineData("{\"a\\nb\": 1}")]
    [InlineData("{\"a\\u202Eb\": 1}")]
    [InlineData("{\"format\": \"0123456789012345678901234567890123456\\ud83d\\ude00\\ud83d\\ude00\\ud83d\\ude00\"}")]
    public void WhatStoodInTheFile_IsFitToPrint(string json)
    {
        var faults = Inspection.Car.CarFileReader.Read(System.Text.Encoding.UTF8.GetBytes(json)).Match(_ => [], faults => faults);
        Assert.NotEmpty(faults);
        Assert.All(faults, f => Assert.Null(FuzzSubjects.NoSentence(f.Sentence)));
        Assert.All(faults, f => Assert.DoesNotContain('\u202E', f.ToString()));
    }

    [Fact]
    public void ANameWithoutEnd_IsShortened()
    {
        var json = $"{{\"{new string('x', 5000)}\": 1}}";
        var faults = Inspection.Car.CarFileReader.Read(System.Text.Encoding.UTF8.GetBytes(json)).Match(_ => [], faults => faults);
        Assert.All(faults, f => Assert.True(f.ToString().Length < 2100));
    }
}
