using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>A pair in the table: left against right, in words a person would say.</summary>
/// <param name="Name">The pair, such as <c>A</c>.</param>
/// <param name="Label">What it is; null when not told.</param>
/// <param name="Sideways">How far its middle stands to one side of the centre line.</param>
/// <param name="Ahead">Which side stands ahead.</param>
/// <param name="Height">Which side is higher.</param>
public sealed record PairRow(string Name, string? Label, PairRow.Cell Sideways, PairRow.Cell Ahead, PairRow.Cell Height)
{
    /// <summary>A value with how sure it is and what it means. Without a value there is only a word why not.</summary>
    public sealed record Cell(string? Value, string? Sure, bool HasLimit, Verdict? Verdict);

    /// <summary>The pairs of an answer.</summary>
    public static IReadOnlyList<PairRow> Of(CarFile car, FloorAnswer answer)
    {
        var display = ShownLengths.Of(car);
        return [.. answer.Pairs.Select(pair => RowOf(car, answer, pair, display))];
    }

    private static PairRow RowOf(CarFile car, FloorAnswer answer, PairEstimate pair, LengthDisplay display) =>
        new(
            NameOf(pair),
            car.Frame.Point(pair.Left)?.Label,
            CellOf(pair.SideShiftMetres, pair.USideShiftMetres, display, ("pair.left", "pair.right"), CheckOf(answer, pair, "sideShift")),
            CellOf(
                pair.StaggerMetres,
                pair.UStaggerMetres,
                display,
                ("pair.left-ahead", "pair.right-ahead"),
                CheckOf(answer, pair, "stagger")
            ),
            CellOf(
                // The frame's own height difference, not the stands': it is what the verdict beside it is about, and what the sheet prints.
                pair.LevelledHeightDifferenceMetres
                    ?? pair.HeightDifferenceMetres,
                pair.ULevelledHeightDifferenceMetres ?? pair.UHeightDifferenceMetres,
                display,
                ("pair.left-high", "pair.right-high"),
                CheckOf(answer, pair, "heightDifference")
            )
        );

    /// <summary>A.L and A.R are A; other names stand side by side.</summary>
    public static string NameOf(PairEstimate pair) => NameOf(pair.Left, pair.Right);

    /// <summary>A.L and A.R are A; other names stand side by side.</summary>
    public static string NameOf(string left, string right) =>
        left.EndsWith(".L", StringComparison.Ordinal) && right.EndsWith(".R", StringComparison.Ordinal) && left[..^2] == right[..^2]
            ? left[..^2]
            : $"{left} / {right}";

    private static Check? CheckOf(FloorAnswer answer, PairEstimate pair, string kind) =>
        answer.Checks.FirstOrDefault(c => c.Kind == kind && c.Points.Contains(pair.Left) && c.Points.Contains(pair.Right));

    private static Cell CellOf(double? metres, double? uMetres, LengthDisplay display, (string Plus, string Minus) words, Check? check)
    {
        if (metres is not { } value)
        {
            return new Cell(null, null, HasLimit: false, Verdict: null);
        }

        var size = display.Number(Math.Abs(value));
        // What rounds to nothing has no side.
        var text = display.Rounded(Math.Abs(value)) == Length.Zero ? "0" : Say(value > 0 ? words.Plus : words.Minus, size);
        return new Cell(
            text,
            uMetres is { } u ? display.PlusMinus(ShownLengths.Coverage * u) : null,
            check?.LimitMetres is not null,
            check?.Verdict
        );
    }
}
