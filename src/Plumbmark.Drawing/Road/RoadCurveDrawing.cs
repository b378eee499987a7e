using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Drawing.Road;

/// <summary>How an angle of the front wheels changes from rebound to bump: the wheel's travel up the page, the angle across it, both sides and the drawing in one figure.</summary>
public static class RoadCurveDrawing
{
    private const double Above = 26;
    private const double Height = 210;
    private const double LeftRoom = 52;
    private const double RightRoom = 14;
    private const double BelowRoom = 34;
    private const double Minute = Math.PI / 180 / 60;
    private static readonly int[] s_minuteSteps = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600];

    /// <summary>Toe over travel: the bump steer curve.</summary>
    public static Picture Toe(RoadAnswer answer, RoadDisplay display, RoadDrawingOptions? options = null) =>
        Of(
            answer,
            display,
            options,
            Texts.Say("drawing.road-curve.bump-steer-toe-over-travel"),
            p => p.ToeIn,
            Texts.Say("drawing.road-curve.toe-out"),
            Texts.Say("drawing.road-curve.toe-in")
        );

    /// <summary>Camber over travel.</summary>
    public static Picture Camber(RoadAnswer answer, RoadDisplay display, RoadDrawingOptions? options = null) =>
        Of(
            answer,
            display,
            options,
            Texts.Say("drawing.road-curve.camber-over-travel"),
            p => p.Camber,
            Texts.Say("drawing.road-curve.top-in"),
            Texts.Say("drawing.road-curve.top-out")
        );

    private static Picture Of(
        RoadAnswer answer,
        RoadDisplay display,
        RoadDrawingOptions? options,
        string title,
        Func<CurvePoint, double> angleOf,
        string less,
        string more
    )
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(display);
        options ??= new RoadDrawingOptions();
        List<(Ink Ink, string Words, IReadOnlyList<CurvePoint> Points)> lines =
        [
            (Palette.Should, Texts.Say("drawing.road-curve.as-drawn-left"), answer.DrawnCurves[Side.Left]),
            (Palette.Frame, Texts.Say("drawing.road-curve.left-as-found"), answer.FoundCurves[Side.Left]),
            (Palette.FarSide, Texts.Say("drawing.road-curve.right-as-found"), answer.FoundCurves[Side.Right]),
        ];
        lines.RemoveAll(l => l.Points.Count < 2);
        if (lines.Count == 0)
        {
            return RoadLegend.Empty(options, title, Texts.Say("drawing.road-curve.no-curve-yet-the-front"));
        }

        var axes = Axes.Of([.. lines.SelectMany(l => l.Points)], angleOf, options.Width);
        var shapes = new List<Shape>();
        shapes.AddRange(axes.Draw(display, less, more));
        shapes.AddRange(lines.Select(l => new Shape.Path([.. l.Points.Select(p => axes.At(angleOf(p), p.TravelMetres))], false, l.Ink)));
        var (legend, bottom) = RoadLegend.Draw(Above + Height + BelowRoom, options, [], [.. lines.Select(l => (l.Ink, l.Words))]);
        var spans = lines.Select(l =>
            Texts.Say(
                "drawing.road-curve.at-full-rebound-to-at",
                l.Words,
                RoadDisplay.Signed(angleOf(l.Points[0])),
                RoadDisplay.Signed(angleOf(l.Points[^1]))
            )
        );
        return new Picture(options.Width, bottom, title, string.Join(' ', spans), [.. shapes, .. legend]);
    }

    private sealed record Axes(double LowMinutes, double HighMinutes, int StepMinutes, double Down, double Up, double Width)
    {
        public static Axes Of(IReadOnlyList<CurvePoint> points, Func<CurvePoint, double> angleOf, double width)
        {
            var (low, high) = (points.Min(angleOf) / Minute, points.Max(angleOf) / Minute);
            var step = s_minuteSteps.FirstOrDefault(s => (high - low) / s <= 5, s_minuteSteps[^1]);
            var (from, to) = (Math.Floor(low / step) * step, Math.Ceiling(high / step) * step);
            return new(from, to > from ? to : from + step, step, points.Min(p => p.TravelMetres), points.Max(p => p.TravelMetres), width);
        }

        public Spot At(double angleRadians, double travelMetres) =>
            new(
                LeftRoom + (((angleRadians / Minute) - LowMinutes) / (HighMinutes - LowMinutes) * (Width - LeftRoom - RightRoom)),
                Above + ((Up - travelMetres) / (Up - Down) * Height)
            );

        public IEnumerable<Shape> Draw(RoadDisplay display, string less, string more)
        {
            for (var minutes = LowMinutes; minutes <= HighMinutes + (0.5 * StepMinutes); minutes += StepMinutes)
            {
                var top = At(minutes * Minute, Up);
                yield return new Shape.Line(top, top.Moved(0, Height), Palette.Measured);
                yield return new Shape.Words(top.Moved(0, Height + 14), RoadDisplay.Signed(minutes * Minute), Palette.Note, Anchor.Middle);
            }

            foreach (
                var (travel, words) in new[]
                {
                    (Up, Texts.Say("drawing.road-curve.bump")),
                    (0.0, Texts.Say("drawing.road-curve.ride-height")),
                    (Down, Texts.Say("drawing.road-curve.rebound")),
                }
            )
            {
                var left = At(LowMinutes * Minute, travel);
                yield return new Shape.Line(left, new Spot(Width - RightRoom, left.Y), travel == 0 ? Palette.Rule : Palette.Measured);
                var lines = travel == 0 ? new[] { "ride", "height" } : [words, display.LengthSize(travel)];
                // The lowest pair stands above its line, clear of the angles below it.
                var first = travel < 0 ? left.Y - 14 : left.Y;
                yield return new Shape.Words(new Spot(2, first), lines[0], Palette.Note);
                yield return new Shape.Words(new Spot(2, first + 12), lines[1], Palette.Remark);
            }

            yield return new Shape.Words(new Spot(LeftRoom, Above + Height + 30), $"← {less}", Palette.Remark);
            yield return new Shape.Words(new Spot(Width - RightRoom, Above + Height + 30), $"{more} →", Palette.Remark, Anchor.End);
        }
    }
}
