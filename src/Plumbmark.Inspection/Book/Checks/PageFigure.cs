using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>A printed length on a page with all that the checks ask of it.</summary>
/// <param name="Dimension">The figure.</param>
/// <param name="Value">The length that is used: printed, or corrected.</param>
internal sealed record PageFigure(BookDimension Dimension, Length Value)
{
    /// <summary>No figure: what holds because the drawing is symmetrical.</summary>
    public static PageFigure BySymmetry { get; } = new(new BookDimension("", new BookSubject.Named("symmetry")), Length.FromInches(0));

    public string Id => Dimension.Id;

    public double Metres => Value.Metres;

    public double RoundingMetres => PrintedRounding.Metres(Value);

    /// <summary>Whether the value is what is printed, so that a slip in it can be looked for.</summary>
    public bool IsPrinted => Dimension.Status is FigureStatus.Printed;

    /// <summary>The lengths of a page that count: doubted ones and those without a figure are left out.</summary>
    public static IReadOnlyList<PageFigure> Of(BookPage page) =>
        [.. page.Dimensions.Select(d => d.Used is Amount.OfLength length ? new PageFigure(d, length.Value) : null).OfType<PageFigure>()];

    public IEnumerable<LikelySlip> Slips(Func<double, bool> isRightMetres) =>
        IsPrinted ? Checks.Slips.Explaining(Id, Value, isRightMetres) : [];

    /// <summary>An amount for a sentence, in the figure's own unit.</summary>
    public static string Text(double metres, LengthUnit unit) =>
        new LengthDisplay(unit == LengthUnit.Inch ? Length.FromFraction(0, 1, 64, unit) : Length.FromMillimetres(0.1m)).Text(metres);
}
