using Plumbmark.Drawing.Pictures;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>
/// The pairs from behind, as from the driver's seat, the front pair on top: each a line that leans as its heights differ, exaggerated.
/// Lines that do not lean alike are a twist.
/// </summary>
public static class FloorEndDrawing
{
    private const double Header = 30;
    private const double Row = 54;
    private const double Reach = 12;
    private const double WordsBelow = 24;
    private const double NameRoom = 66;

    /// <summary>The pairs of a frame whose heights are known on both sides.</summary>
    public static Picture Of(CarFile car, FloorAnswer answer, FloorDrawingOptions? options = null)
    {
        options ??= new FloorDrawingOptions();
        var title = Texts.Say("drawing.floor-end.heights-across", FloorWords.NameOf(car));
        var forward = FloorPlaces.Of(car, answer).ToDictionary(p => p.Id, p => p.XMetres, StringComparer.Ordinal);
        var pairs = answer
            .Pairs.Where(p => p.HeightDifferenceMetres is not null)
            .OrderByDescending(p => forward.GetValueOrDefault(p.Left))
            .ToList();
        return pairs.Count == 0
            ? FloorWords.Empty(options, title, Texts.Say("drawing.floor-end.no-pair-has-heights-on"))
            : Draw(ShownLengths.Of(car), answer, options, pairs, title);
    }

    private static Picture Draw(
        LengthDisplay display,
        FloorAnswer answer,
        FloorDrawingOptions options,
        IReadOnlyList<PairEstimate> pairs,
        string title
    )
    {
        // No scale of length here: the lines have one width, and the lean is drawn as a share of the drawing's usual scale.
        const double UnitsPerMetre = 200;
        var largest = pairs.Max(p => Math.Abs(p.HeightDifferenceMetres!.Value)) / 2;
        var times = Exaggeration.Of(Math.Max(largest, 1e-5), UnitsPerMetre, Reach); // 0.01 mm: level frames stay level lines
        var shapes = new List<Shape>
        {
            new Shape.Words(new Spot(2, 12), Texts.Say("drawing.floor-end.left"), Palette.Remark),
            new Shape.Words(
                new Spot(options.Width / 2, 12),
                Texts.Say("drawing.floor-end.seen-from-behind-front-pair"),
                Palette.Remark,
                Anchor.Middle
            ),
            new Shape.Words(new Spot(options.Width - 2, 12), Texts.Say("drawing.floor-end.right"), Palette.Remark, Anchor.End),
        };
        var y = Header + Reach + 4;
        foreach (var pair in pairs)
        {
            shapes.Add(Pair(display, answer, options, pair, y, pair.HeightDifferenceMetres!.Value / 2 * UnitsPerMetre * times));
            y += Row;
        }

        var words = Texts.Say("drawing.floor-end.the-lean-of-each-line");
        shapes.Add(new Shape.Words(new Spot(2, y - 4), words, Palette.Remark));
        var sentences = pairs.Select(p => Texts.Say("drawing.floor-end.to", p.Left, p.Right, Words(display, p)));
        return new Picture(options.Width, y + 6, title, string.Join(' ', sentences), shapes);
    }

    private static Shape.Group Pair(
        LengthDisplay display,
        FloorAnswer answer,
        FloorDrawingOptions options,
        PairEstimate pair,
        double y,
        double leanUnits
    )
    {
        var check = answer.Checks.FirstOrDefault(c => c.Kind == "heightDifference" && c.Points.Contains(pair.Left));
        var sign = check?.Verdict switch
        {
            null => PointSign.NoLimit,
            Verdict.True => PointSign.True,
            Verdict.Out => PointSign.Out,
            _ => PointSign.CannotTellYet,
        };
        var (left, right) = (new Spot(NameRoom, y - leanUnits), new Spot(options.Width - NameRoom, y + leanUnits));
        var words = check?.Verdict is null ? Words(display, pair) : $"{Words(display, pair)}: {PointSigns.Words(sign)}";
        var shapes = new List<Shape>
        {
            new Shape.Line(left with { Y = y }, right with { Y = y }, Palette.Should),
            new Shape.Line(left, right, Palette.Frame),
            new Shape.Words(new Spot(2, y + 4), Plate.Cut(pair.Left, Palette.Name, NameRoom - 12), Palette.Name),
            new Shape.Words(
                new Spot(options.Width - 2, y + 4),
                Plate.Cut(pair.Right, Palette.Name, NameRoom - 12),
                Palette.Name,
                Anchor.End
            ),
        };
        shapes.AddRange(PointSigns.Draw(sign, left));
        shapes.AddRange(PointSigns.Draw(sign, right));
        var lettering = sign == PointSign.Out ? Palette.OutWord : Palette.Note;
        shapes.Add(new Shape.Words(new Spot(options.Width / 2, y + WordsBelow), words, lettering, Anchor.Middle));
        return new Shape.Group("pair", Texts.Say("drawing.floor-end.to-2", pair.Left, pair.Right, words), shapes);
    }

    private static string Words(LengthDisplay display, PairEstimate pair)
    {
        var difference = pair.HeightDifferenceMetres!.Value;
        var sureness = display.PlusMinus(ShownLengths.Coverage * (pair.UHeightDifferenceMetres ?? 0));
        return display.Rounded(difference) == Length.Zero
            ? Texts.Say("drawing.floor-end.level", sureness)
            : Texts.Say(
                "drawing.floor-end.higher-by",
                difference > 0 ? Texts.Say("drawing.floor-end.left") : Texts.Say("drawing.floor-end.right"),
                display.Text(Math.Abs(difference)),
                sureness
            );
    }
}
