using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Do the inch column and the millimetre column say the same, within how finely each is printed?</summary>
internal static class ColumnCheck
{
    public static IEnumerable<BookFinding> Of(BookPage page) =>
        from d in page.Dimensions
        where d.Status is FigureStatus.Printed
        let both = (One: d.Value as Amount.OfLength, Other: d.AlsoPrinted as Amount.OfLength)
        where both.One is not null && both.Other is not null
        let one = both.One!.Value
        let other = both.Other!.Value
        let allowed = PrintedRounding.Metres(one) + PrintedRounding.Metres(other) + 1e-9
        where Math.Abs(one.Metres - other.Metres) > allowed
        select BookFinding.Of(
            FindingKind.ColumnsDisagree,
            [d.Id],
            Texts.Say(
                "book.column-check.is-printed-as-and-as",
                d.Id,
                d.Subject.Words,
                Written(one),
                Written(other),
                PageFigure.Text(other.Metres, one.Unit)
            ),
            Slips
                .Explaining(d.Id, one, m => Math.Abs(m - other.Metres) <= allowed)
                .Concat(Slips.Explaining(d.Id, other, m => Math.Abs(m - one.Metres) <= allowed))
        );

    private static string Written(Length length)
    {
        var unit = length.Unit == LengthUnit.Inch ? "in" : "mm";
        return length.AsTyped.Any(char.IsAsciiLetter) ? length.AsTyped : $"{length.AsTyped} {unit}";
    }
}
