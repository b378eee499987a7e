using System.Text;
using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Tests.Book;

public class BookFileTests
{
    private const string Right = """
        { "format": "plumbmark-book", "version": 1, "pages": [
          { "id": "p1", "title": "Frame", "units": "in",
            "source": { "title": "Dipper workshop book", "edition": "2nd", "page": "14" },
            "appliesTo": { "serials": [ { "from": "QD 1000", "to": "QD 1199" } ], "attributes": [ { "name": "wheels", "value": "wire" } ] },
            "dimensions": [
              { "id": "a", "kind": "plan", "from": "A.L", "to": "B.R", "value": "33 1/8", "also": "841.4 mm", "tolerance": "1/16" },
              { "id": "b", "kind": "plan", "from": "A.R", "to": "B.L", "value": null, "mustEqual": ["a"] },
              { "id": "c", "kind": "height", "point": "A.L", "value": -6.94, "bothSides": true,
                "status": { "is": "doubted", "reason": "does not close" } },
              { "id": "d", "kind": "part", "part": "coil-spring", "dimension": "rate", "value": "180 lbf/in",
                "tolerance": { "plus": "5 lbf/in", "minus": "10 lbf/in" } } ],
            "chains": [ { "total": "a", "parts": ["b", "c"] } ] } ] }
        """;

    [Fact]
    public void Read_ARightFile_KeepsWhatIsPrinted()
    {
        var page = Assert.Single(Pages(Right));
        Assert.Equal("Dipper workshop book, 2nd, page 14", page.Source.ToString());
        Assert.Equal("±1/16", page.Dimension("a")!.Tolerance!.ToString());
        Assert.Null(page.Dimension("b")!.Value);
        Assert.Null(page.Dimension("c")!.Used);
        Assert.Equal("+5 lbf/in -10 lbf/in", page.Dimension("d")!.Tolerance!.ToString());
        Assert.True(BookFileLaws.IsValid(Encoding.UTF8.GetBytes(Right)));
    }

    [Fact]
    public void Read_AFigureWithoutASource_IsAcceptedAndAlwaysLabelled()
    {
        var page = Assert.Single(
            Pages(
                """{"format":"plumbmark-book","version":1,"pages":[{"id":"p","units":"mm","dimensions":[{"id":"a","kind":"side","point":"A.L","value":300,"source":{"figure":"K"}}]}]}"""
            )
        );
        Assert.Equal("no source (K)", page.SourceOf(page.Dimensions[0]).ToString());
    }

    [Theory]
    [InlineData(
        "\"units\": \"in\"",
        "\"units\": \"ft\"",
        "pages[0].units (line 2, column 44): Found the text \"ft\"; one of in, mm is needed here."
    )]
    [InlineData("\"version\": 1", "\"version\": 2", "version (line 1, column 42): Found the number 2; 1 is needed here.")]
    [InlineData("\"QD 1199\"", "\"QE 1199\"", "the letters in front differ")]
    [InlineData("\"QD 1199\"", "\"QD 999\"", "the first must not come after the last")]
    [InlineData("\"QD 1199\"", "\"later\"", "a serial number is needed here")]
    [InlineData("\"kind\": \"height\"", "\"kind\": \"tall\"", "one of length, plan, direct, along")]
    [InlineData("\"to\": \"B.R\"", "\"to\": \"A.L\"", "runs from \"A.L\" to itself")]
    [InlineData(
        "\"33 1/8\"",
        "\"33 B\"",
        "pages[0].dimensions[0].value (line 6, column 73): Found “33 B”; a scan often makes B or 8 of 1/8"
    )]
    [InlineData("\"33 1/8\"", "\"7 deg\"", "a length is needed here")]
    [InlineData("\"33 1/8\"", "-33", "never negative")]
    [InlineData("\"mustEqual\": [\"a\"]", "\"mustEqual\": [\"q\"]", "The figure \"q\" is not on page \"p1\"")]
    [InlineData("\"mustEqual\": [\"a\"]", "\"mustEqual\": [\"b\"]", "must equal itself")]
    [InlineData("\"parts\": [\"b\", \"c\"]", "\"parts\": [\"b\"]", "A chain of 1 has nothing to add up")]
    [InlineData("\"total\": \"a\"", "\"total\": \"z\"", "The figure \"z\" is not on page \"p1\"")]
    [InlineData("\"reason\": \"does not close\"", "\"because\": 1", "The field \"reason\" is missing")]
    [InlineData("\"id\": \"b\"", "\"id\": \"a\"", "The id \"a\" is already used on line 6")]
    [InlineData("\"bothSides\"", "\"twoSides\"", "The field \"twoSides\" is not known here")]
    public void Read_AWrongFile_TellsTheFaultWithItsPlace(string right, string wrong, string fault)
    {
        Assert.Contains(right, Right, StringComparison.Ordinal);
        var told = Faults(Right.Replace(right, wrong, StringComparison.Ordinal));
        Assert.True(told.Any(f => f.Contains(fault, StringComparison.Ordinal)), string.Join('\n', told));
        Assert.All(told, f => Assert.Contains("line ", f, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_AFileWithManyFaults_TellsThemAllAtOnce()
    {
        var text = Right
            .Replace("\"33 1/8\"", "\"33 B\"", StringComparison.Ordinal)
            .Replace("\"QD 1199\"", "\"QD 9\"", StringComparison.Ordinal)
            .Replace("\"rate\"", "3", StringComparison.Ordinal);
        Assert.Equal(3, Faults(text).Count);
    }

    private static IReadOnlyList<BookPage> Pages(string text) =>
        BookFile
            .Read(Encoding.UTF8.GetBytes(text))
            .Match(pages => pages, faults => throw new InvalidOperationException(string.Join('\n', faults)));

    private static List<string> Faults(string text) =>
        BookFile.Read(Encoding.UTF8.GetBytes(text)).Match(_ => [], faults => faults.Select(f => f.ToString()).ToList());
}
