using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Press;

namespace Plumbmark.Drawing.Press;

/// <summary>The part on its blocks under the ram, from the side and to scale: spans, depth, bend and packing all by the same factor.</summary>
public static class PressSetUpDrawing
{
    private const double Width = 340;
    private const double Side = 12;
    private const double RamRoom = 54; // ram, saddle and the words above
    private const double BlockHeight = 26;
    private const double DimensionRoom = 50; // below the bed
    private const double OverhangShare = 0.18; // of the span, on either side, to show that the part goes on
    private const double BlockWidth = 16;
    private const double ThinnestBar = 3; // units: a thin sheet must still be seen; the only thing here that may be larger than to scale

    /// <summary>The set-up of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="words">Words in the car's unit.</param>
    public static Picture Of(PressPlan plan, PressWords words)
    {
        var layout = plan.Layout;
        var scale = (Width - (2 * Side)) / (layout.SpanMetres * (1 + (2 * OverhangShare)));
        var half = Math.Abs(plan.Findings.Bend?.AngleRadians ?? 0) / 2;
        var overhang = OverhangShare * layout.SpanMetres;
        var depth = Math.Max(ThinnestBar, plan.Section.DepthMetres * scale);
        var ram = new Spot(Side + ((overhang + layout.LeftArmMetres) * scale), RamRoom);
        double Drop(double arm) => arm * Math.Tan(half) * scale;
        Spot Top(double fromRam) => new(ram.X + (fromRam * scale), ram.Y + Drop(Math.Abs(fromRam)));
        var (left, right) = (Top(-layout.LeftArmMetres), Top(layout.RightArmMetres));
        var bed = Math.Max(left.Y, right.Y) + depth + BlockHeight;
        var shapes = new List<Shape>();
        shapes.Add(new Shape.Line(new(Side, bed), new(Width - Side, bed), Palette.Frame));
        shapes.Add(Block(Texts.Say("drawing.press-set-up.left-block"), left, depth, bed));
        shapes.Add(Block(Texts.Say("drawing.press-set-up.right-block"), right, depth, bed));
        shapes.Add(Bar(Top(-layout.LeftArmMetres - overhang), ram, Top(layout.RightArmMetres + overhang), depth));
        shapes.Add(Ram(ram));
        shapes.AddRange(Dimension(left.X, ram.X, bed + 16, words.Text(layout.LeftArmMetres)));
        shapes.AddRange(Dimension(ram.X, right.X, bed + 16, words.Text(layout.RightArmMetres)));
        shapes.Add(new Shape.Words(new(Width / 2, bed + 44), Scale(scale), Palette.Remark, Anchor.Middle));
        var description = string.Join(' ', words.SetUp(layout));
        return new Picture(Width, bed + DimensionRoom, Texts.Say("drawing.press-set-up.how-it-lies-in-the"), description, shapes);
    }

    private static Shape.Path Bar(Spot left, Spot crown, Spot right, double depth) =>
        new([left, crown, right, right.Moved(0, depth), crown.Moved(0, depth), left.Moved(0, depth)], true, Palette.NoVerdict);

    private static Shape.Group Block(string name, Spot top, double depth, double bed)
    {
        var under = top.Y + depth;
        Spot[] corners =
        [
            new(top.X - (BlockWidth / 2), under),
            new(top.X + (BlockWidth / 2), under),
            new(top.X + (BlockWidth / 2), bed),
            new(top.X - (BlockWidth / 2), bed),
        ];
        return new(Texts.Say("drawing.press-set-up.block"), name, [new Shape.Path(corners, true, Palette.Box)]);
    }

    private static Shape.Group Ram(Spot crown)
    {
        const double Half = 11;
        const double Saddle = 7;
        Spot[] saddle =
        [
            crown.Moved(-Half - 5, -Saddle),
            crown.Moved(Half + 5, -Saddle),
            crown.Moved(Half + 5, 0),
            crown.Moved(-Half - 5, 0),
        ];
        Spot[] body =
        [
            crown.Moved(-Half, -Saddle - 26),
            crown.Moved(Half, -Saddle - 26),
            crown.Moved(Half, -Saddle),
            crown.Moved(-Half, -Saddle),
        ];
        return new(
            Texts.Say("drawing.press-set-up.ram"),
            Texts.Say("drawing.press-set-up.ram-with-a-soft-saddle"),
            [
                new Shape.Path(saddle, true, Palette.Box),
                new Shape.Path(body, true, Palette.Box),
                new Shape.Line(crown.Moved(0, -Saddle - 22), crown.Moved(0, -Saddle - 6), Palette.Next),
                new Shape.Path(
                    [crown.Moved(-4, -Saddle - 11), crown.Moved(0, -Saddle - 5), crown.Moved(4, -Saddle - 11)],
                    false,
                    Palette.Next
                ),
                new Shape.Words(crown.Moved(Half + 6, -Saddle - 14), Texts.Say("drawing.press-set-up.ram"), Palette.Note),
            ]
        );
    }

    private static IEnumerable<Shape> Dimension(double from, double to, double y, string text)
    {
        yield return new Shape.Line(new(from, y), new(to, y), Palette.Rule);
        yield return new Shape.Line(new(from, y - 5), new(from, y + 5), Palette.Rule);
        yield return new Shape.Line(new(to, y - 5), new(to, y + 5), Palette.Rule);
        yield return new Shape.Words(new((from + to) / 2, y + 13), text, Palette.Note, Anchor.Middle);
    }

    private static string Scale(double unitsPerMetre)
    {
        // A picture unit is a CSS pixel at most, 1/96 in.
        const double UnitsPerMetreFullSize = 96 / 0.0254;
        return Texts.Say("drawing.press-set-up.to-scale-about-1-on", Texts.Number(UnitsPerMetreFullSize / unitsPerMetre, "0.#"));
    }
}
