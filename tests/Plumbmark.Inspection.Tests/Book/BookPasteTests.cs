using System.Globalization;
using System.Text;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Paste;

namespace Plumbmark.Inspection.Tests.Book;

public class BookPasteTests
{
    [Fact]
    public void Read_SeventyFiveRows_InOneAction()
    {
        var text = new StringBuilder("Letter\tKind\tFrom\tTo\tInches\tmm\tTol.\tSides\n");
        for (var i = 1; i <= 75; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"k{i}\tplan\tA{i}.L\tB{i}.R\t{i} 3/8\t{(i + 0.375m) * 25.4m:0.0}\t±1/16\tboth\r\n");
        }

        var figures = Accepted(text.ToString());
        Assert.Equal(75, figures.Count);
        Assert.Equal("33 3/8", AmountText.Write(figures[32].Value!));
        Assert.Equal("±1/16", figures[32].Tolerance!.ToString());
        Assert.True(figures[32].IsBothSides);
        Assert.Empty(Inspection.Book.Checks.BookChecks.Of(BookSamples.Page([.. figures])));
    }

    [Theory]
    [InlineData("from;to;value\nA.L;B.R;33 17/32", "33 17/32")]
    [InlineData("from,to,value\nA.L,B.R,33.53", "33.53")]
    [InlineData("from,to,value\nA.L,B.R,\"33,53\"", "33,53")]
    [InlineData("from\tto\tvalue\nA.L\tB.R\t2' 9 17/32\"", "2' 9 17/32\"")]
    [InlineData("from\tto\tvalue\nA.L\tB.R\t\"2' 9 17/32\"\"\"", "2' 9 17/32\"")]
    [InlineData("\n\nFROM\t To \tValue\nA.L\tB.R\t852 mm\n\n", "852 mm")]
    public void Read_LengthsAsPeopleWriteThem_WithAnySeparator(string text, string typed)
    {
        var figure = Assert.Single(Accepted(text));
        Assert.Equal(new BookSubject.Between("A.L", "B.R", LengthSense.Unsaid), figure.Subject);
        Assert.Equal(typed, AmountText.Write(figure.Value!));
    }

    [Fact]
    public void Read_EmptyCellsAndDashes_AreNoFigure_NotZero()
    {
        var figures = Accepted(
            "id\tkind\tpoint\tto\tvalue\tserial from\tserial to\npair\tplan\tA.L\tB.R\tmust be equal\t\t\nh\theight\tA.L\t\t-6.94\tQD 1000\t\n"
        );
        Assert.Null(figures[0].Value);
        Assert.Equal(new BookSubject.At("A.L", Ordinate.Height), figures[1].Subject);
        Assert.Equal("from QD 1000", figures[1].AppliesTo.ToString());
    }

    [Fact]
    public void Read_PartsWithTheirVariants()
    {
        var figure = Assert.Single(
            Accepted("part\tvariant\tdimension\tvalue\ttolerance\nSteering lever\tearly\tpad-height\t1.42\t+0.02 -0.01")
        );
        Assert.Equal(new BookSubject.OfPart(PartKind.SteeringLever, "early", "pad-height"), figure.Subject);
        Assert.Equal("+0.02 -0.01", figure.Tolerance!.ToString());
    }

    [Fact]
    public void Read_FaultsOfAllRows_AreToldByRowAndColumn()
    {
        var refused = Assert.IsType<PasteOutcome.Refused>(
            BookPaste.Read(
                "id\tkind\tfrom\tto\tvalue\na\tplan\tA\tA\t10\nb\ttall\tA\tB\t10\nc\tplan\tA\tB\t33 B\nc2\tplan\tA\tB\t7\nc2\tplan\tA\tB\t10 1/0",
                LengthUnit.Inch
            )
        );
        string[] expected =
        [
            "Row 2, to: Both points",
            "Row 3, kind: Found “tall”",
            "Row 4, value: Found “33 B”; a scan often",
            "Row 6, value: ",
        ];
        Assert.Equal(expected.Length, refused.Faults.Count);
        Assert.All(refused.Faults.Zip(expected), f => Assert.StartsWith(f.Second, f.First.ToString(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "Nothing was pasted")]
    [InlineData("\t\t\n,\"\"", "only empty cells")]
    [InlineData("A.L\tB.R\t33", "The first row must name the columns")]
    [InlineData("from\tto\tvalue", "no row below the headings")]
    [InlineData("from\tto\tvalue\tcolour\nA\tB\t1\tred", "colour: This heading is not known")]
    [InlineData("from\tto\tvalue\tinches\nA\tB\t1\t1", "Two columns mean the same")]
    [InlineData("id\tfrom\tto\tvalue\nq\tA\tB\t1\nq\tA\tC\t1", "used already in row 2")]
    [InlineData("id\tfrom\tto\tvalue\nold\tA\tB\t1", "used already by a figure of this page")]
    public void Read_WhatIsNoBlock_IsRefusedWithASentence(string text, string sentence) =>
        Assert.Contains(
            sentence,
            Assert.IsType<PasteOutcome.Refused>(BookPaste.Read(text, LengthUnit.Inch, ["old"])).Faults[0].ToString(),
            StringComparison.Ordinal
        );

    private static IReadOnlyList<BookDimension> Accepted(string text) =>
        BookPaste
            .Read(text, LengthUnit.Inch)
            .Match(a => a.Dimensions, r => throw new InvalidOperationException(string.Join('\n', r.Faults)));
}
