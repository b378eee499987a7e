using System.Globalization;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Press;

namespace Plumbmark.Drawing.Press;

/// <summary>
/// Travel against set: every bite as a numbered point, what is believed of the next as a band, and straight as a line across. Both axes count from the
/// shape the part began with, so that all bites lie on one curve.
/// </summary>
public static class TravelSetDrawing
{
    private const double Width = 340;
    private const double Height = 230;
    private const double Left = 46;
    private const double Right = 10;
    private const double Top = 14;
    private const double Bottom = 40;
    private const int BandSteps = 12;

    /// <summary>The plot of a log.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="log">The bites.</param>
    /// <param name="state">Where the job stands; a next bite is marked.</param>
    /// <param name="words">Words in the car's unit.</param>
    public static Picture Of(PressPlan plan, PressLog log, PressState state, PressWords words)
    {
        var next = (state as PressState.NextBite)?.Travel;
        var straight = plan.OutByMetres / plan.Lever;
        var furthest = log.Bites.Select(b => b.Record.Travel.Metres + b.TotalSetMetres - b.SetMetres).DefaultIfEmpty(0).Max();
        var before = log.Belief.SetSoFarMetres;
        var widest = Math.Max(furthest, next is null ? 0 : before + next.StraightMetres.High) * 1.06;
        var tallest = Math.Max(straight, log.Bites.Select(b => b.TotalSetMetres).DefaultIfEmpty(0).Max()) * 1.15;
        var axes = new Axes(Math.Max(widest, 1e-6), Math.Max(tallest, 1e-6));
        var shapes = new List<Shape>();
        shapes.AddRange(axes.Draw(words));
        shapes.Add(new Shape.Line(axes.At(0, straight), axes.At(axes.Widest, straight), Palette.Centre));
        shapes.Add(new Shape.Words(axes.At(0, straight).Moved(6, -4), "straight", Palette.Remark));
        if (next is not null)
        {
            shapes.AddRange(Band(log, before, next.StraightMetres.High, axes));
            shapes.AddRange(NextMark(axes, before, next.TravelMetres, next.SetMetres.Middle, words.Travel(next.TravelMetres)));
        }

        shapes.AddRange(log.Bites.Select((bite, i) => Mark(axes, bite, i + 1, words)));
        return new Picture(
            Width,
            Height,
            "Travel against set",
            Describe(log, next is null ? null : words.Travel(next.TravelMetres), words),
            shapes
        );
    }

    private static IEnumerable<Shape> Band(PressLog log, double before, double reach, Axes axes)
    {
        var (low, middle, high) = (new List<Spot>(), new List<Spot>(), new List<Spot>());
        for (var i = 0; i <= BandSteps; i++)
        {
            var travel = reach * i / BandSteps;
            var set = log.Belief.SetForTravelMetres(travel);
            low.Add(axes.At(before + travel, before + Math.Max(0, set.Low)));
            middle.Add(axes.At(before + travel, before + Math.Max(0, set.Middle)));
            high.Add(axes.At(before + travel, before + Math.Max(0, set.High)));
        }

        yield return new Shape.Group(
            "band",
            "what the next bite may do",
            [
                new Shape.Path(low, false, Palette.Sketched),
                new Shape.Path(high, false, Palette.Sketched),
                new Shape.Path(middle, false, Palette.Frame),
            ]
        );
    }

    private static IEnumerable<Shape> NextMark(Axes axes, double before, double travel, double set, string words)
    {
        var spot = axes.At(before + travel, before + Math.Max(0, set));
        yield return new Shape.Line(spot with { Y = axes.At(0, 0).Y }, spot, Palette.Next);
        foreach (
            var shape in Plate.Behind(
                Plate.Inside(new Shape.Words(spot.Moved(0, -10), $"next {words}", Palette.NextWord, Anchor.Middle), Width)
            )
        )
        {
            yield return shape;
        }
    }

    private static Shape.Group Mark(Axes axes, LoggedBite bite, int number, PressWords words)
    {
        var before = bite.TotalSetMetres - bite.SetMetres;
        var spot = axes.At(before + bite.Record.Travel.Metres, Math.Max(0, bite.TotalSetMetres));
        var text = number.ToString(CultureInfo.InvariantCulture);
        return new(
            "bite",
            $"bite {text}: travel {bite.Record.Travel.AsTyped}, {words.Told(bite)}",
            [
                new Shape.Circle(spot, 8, bite.Stops.Count > 0 ? Palette.Doubted : Palette.NoVerdict),
                new Shape.Words(spot.Moved(0, 4), text, bite.Stops.Count > 0 ? Palette.DoubtedWord : Palette.Note, Anchor.Middle),
            ]
        );
    }

    private static string Describe(PressLog log, string? next, PressWords words)
    {
        var said = log.Bites.Select((b, i) => $"Bite {i + 1}: travel {b.Record.Travel.AsTyped}. {words.Told(b)}");
        return string.Join(' ', next is null ? said : said.Append($"Next: {next}."));
    }

    /// <summary>The frame of the plot.</summary>
    private sealed record Axes(double Widest, double Tallest)
    {
        private const int Ticks = 4;

        public Spot At(double travel, double set) =>
            new(Left + (travel / Widest * (Width - Left - Right)), Height - Bottom - (set / Tallest * (Height - Top - Bottom)));

        public IEnumerable<Shape> Draw(PressWords words)
        {
            yield return new Shape.Line(At(0, 0), At(Widest, 0), Palette.Rule);
            yield return new Shape.Line(At(0, 0), At(0, Tallest), Palette.Rule);
            for (var i = 1; i <= Ticks; i++)
            {
                var (x, y) = (Widest * i / (Ticks + 0.5), Tallest * i / (Ticks + 0.5));
                yield return new Shape.Line(At(x, 0), At(x, 0).Moved(0, 4), Palette.Rule);
                yield return new Shape.Words(At(x, 0).Moved(0, 16), words.Number(x), Palette.Remark, Anchor.Middle);
                yield return new Shape.Line(At(0, y), At(0, y).Moved(-4, 0), Palette.Rule);
                yield return new Shape.Words(At(0, y).Moved(-6, 4), words.Number(y), Palette.Remark, Anchor.End);
            }

            yield return new Shape.Words(
                new(Width - Right, Height - 6),
                $"travel from the first shape, {words.Unit}",
                Palette.Remark,
                Anchor.End
            );
            yield return new Shape.Words(new(2, 10), "stayed", Palette.Remark);
        }
    }
}
