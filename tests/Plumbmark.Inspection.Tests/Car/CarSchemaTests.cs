using System.Text;
using System.Text.Json;
using CsCheck;
using Json.Schema;
using Plumbmark.Inspection.Car;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Car;

/// <summary>The published schema, judged by an independent validator, and our reader must agree on what a car file is.</summary>
public class CarSchemaTests
{
    /// <summary>Read once: the validator keeps it under its own name.</summary>
    internal static readonly JsonSchema Schema = JsonSchema.FromText(CarSchema.Text());

    [Fact]
    public void Schema_AcceptsEveryFileThatIsWritten() =>
        CarFiles.Any.Sample(
            car => Assert.True(IsValid(CarFileWriter.Write(car)), Encoding.UTF8.GetString(CarFileWriter.Write(car))),
            iter: 50
        );

    [Theory]
    [InlineData("\"version\": 1", "\"version\": 2")]
    [InlineData("\"role\": \"suspension\"", "\"roll\": 3")]
    [InlineData("\"61 3/16\"", "true")]
    [InlineData("[60, 12, 0]", "[60, 12]")]
    [InlineData("\"height\", \"point\"", "\"tall\", \"point\"")]
    [InlineData(", \"dy\": \"-0.5 mm\"", "")]
    [InlineData("\"id\": \"r3\", ", "")]
    [InlineData("\"kind\": \"height\"", "\"kind\": \"plan\"")]
    public void SchemaAndReader_RefuseTheSame(string right, string wrong)
    {
        var bytes = Encoding.UTF8.GetBytes(CarFileReaderTests.Right.Replace(right, wrong, StringComparison.Ordinal));
        Assert.False(IsValid(bytes));
        Assert.IsType<CarFileOutcome.Refused>(CarFileReader.Read(bytes));
    }

    [Fact]
    public void Schema_AcceptsTheRightExample() => Assert.True(IsValid(Encoding.UTF8.GetBytes(CarFileReaderTests.Right)));

    internal static bool IsValid(byte[] bytes)
    {
        using var document = JsonDocument.Parse(bytes);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
