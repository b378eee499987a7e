using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Json.Schema;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Book;

public class BookFileLaws
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(BookFile.Schema());

    [Fact]
    public void Export_ImportedIntoAnEmptyStore_ExportsTheSameBytes() =>
        BookPages.Pages.Sample(
            pages =>
            {
                var bytes = BookFile.Write(pages);
                var read = BookFile.Read(bytes).Match(p => p, faults => throw new InvalidOperationException(string.Join('\n', faults)));
                var acts = read.Select(p => new JournalEntry(
                    Guid.NewGuid(),
                    DateTimeOffset.UnixEpoch,
                    null,
                    Through(new Act.BookPagePut(p))
                ));
                Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(BookFile.Write(Fold.Of(acts).Book.Pages)));
            },
            iter: 300
        );

    [Fact]
    public void Schema_AcceptsEveryFileThatIsWritten() =>
        BookPages.Pages.Sample(
            pages => Assert.True(IsValid(BookFile.Write(pages)), Encoding.UTF8.GetString(BookFile.Write(pages))),
            iter: 100
        );

    [Fact]
    public void Schemas_OfBookAndCar_DescribeAPageAlike()
    {
        var (book, car) = (JsonNode.Parse(BookFile.Schema())!["$defs"]!, JsonNode.Parse(CarSchema.Text())!["$defs"]!);
        foreach (var (name, definition) in book.AsObject())
        {
            Assert.True(JsonNode.DeepEquals(definition, car[name]), $"$defs/{name} differs");
        }
    }

    internal static bool IsValid(byte[] bytes)
    {
        using var document = JsonDocument.Parse(bytes);
        return s_schema.Evaluate(document.RootElement).IsValid;
    }

    // Through the text that is kept, as a store would.
    private static Act Through(Act act) => ActJson.Read(ActJson.Write(act), new Inspection.Car.Json.Faults())!;
}
