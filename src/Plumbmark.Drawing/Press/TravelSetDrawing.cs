using System.Globalization;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Engine.Bending;
using Plumbmark.Inspection.Language;
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
        var widest = Math.Max(furthest, next is null ? 0 : before + Reach(next)) * 1.06;
        var tallest = Math.Max(straight, log.Bites.Select(b => b.TotalSetMetres).DefaultIfEmpty(0).Max()) * 1.15;
        var axes = new Axes(Math.Max(widest, 1e-6), Math.Max(tallest, 1e-6));
        var shapes = new List<Shape>();
        shapes.AddRange(axes.Draw(words));
        shapes.Add(new Shape.Line(axes.At(0, straight), axes.At(axes.Widest, straight), Palette.Centre));
        shapes.Add(new Shape.Words(axes.At(0, straight).Moved(6, -4), Texts.Say("drawing.travel-set.straight"), Palette.Remark));
        if (next is not null)
        {
            shapes.AddRange(Band(log, before, Reach(next), axes));
            shapes.AddRange(NextMark(axes, before, next.TravelMetres, next.SetMetres.Middle, words.Travel(next.TravelMetres)));
        }

        shapes.AddRange(log.Bites.Select((bite, i) => Mark(axes, bite, i + 1, words)));
        return new Picture(
            Width,
            Height,
            Texts.Say("drawing.travel-set.travel-against-set"),
            Describe(log, next is null ? null : words.Travel(next.TravelMetres), words),
            shapes
        );
    }

    // A doubt that reaches far to the right would squeeze everything else together: twice the middle is enough to see it.
    private static double Reach(NextTravel next) => Math.Min(next.StraightMetres.High, 2 * next.StraightMetres.Middle);

    private static IEnumerable<Shape> Band(PressLog log, double before, double reach, Axes axes)
    {
        var sets = Enumerable
            .Range(0, BandSteps + 1)
            .Select(i => reach * i / BandSteps)
            .Select(travel => (Travel: travel, Set: log.Belief.SetForTravelMetres(travel)))
            .ToList();
        Shape.Path Curve(Func<Interval, double> of, Ink ink) =>
            new(axes.Clipped([.. sets.Select(s => (before + s.Travel, before + Math.Max(0, of(s.Set))))]), false, ink);
        yield return new Shape.Group(
            "band",
            Texts.Say("drawing.travel-set.what-the-next-bite-may"),
            [Curve(s => s.Low, Palette.Sketched), Curve(s => s.High, Palette.Sketched), Curve(s => s.Middle, Palette.Frame)]
        );
    }

    private static IEnumerable<Shape> NextMark(Axes axes, double before, double travel, double set, string words)
    {
        var spot = axes.At(before + travel, before + Math.Max(0, set));
        yield return new Shape.Line(spot with { Y = axes.At(0, 0).Y }, spot, Palette.Next);
        foreach (
            var shape in Plate.Behind(
                Plate.Inside(
                    new Shape.Words(spot.Moved(0, -10), Texts.Say("drawing.travel-set.next", words), Palette.NextWord, Anchor.Middle),
                    Width
                )
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
            Texts.Say("drawing.travel-set.bite-travel", text, bite.Record.Travel.AsTyped, words.Told(bite)),
            [
                new Shape.Circle(spot, 8, bite.Stops.Count > 0 ? Palette.Doubted : Palette.NoVerdict),
                new Shape.Words(spot.Moved(0, 4), text, bite.Stops.Count > 0 ? Palette.DoubtedWord : Palette.Note, Anchor.Middle),
            ]
        );
    }

    private static string Describe(PressLog log, string? next, PressWords words)
    {
        var said = log.Bites.Select((b, i) => Texts.Say("drawing.travel-set.bite-travel-2", i + 1, b.Record.Travel.AsTyped, words.Told(b)));
        return string.Join(' ', next is null ? said : said.Append(Texts.Say("drawing.travel-set.next-2", next)));
    }

    /// <summary>The frame of the plot.</summary>
    private sealed record Axes(double Widest, double Tallest)
    {
        private const int MostTicks = 5;

        public Spot At(double travel, double set) =>
            new(Left + (travel / Widest * (Width - Left - Right)), Height - Bottom - (set / Tallest * (Height - Top - Bottom)));

        /// <summary>A curve up to where it leaves the frame.</summary>
        public List<Spot> Clipped(IReadOnlyList<(double Travel, double Set)> curve)
        {
            var spots = new List<Spot>();
            for (var i = 0; i < curve.Count; i++)
            {
                if (curve[i].Set <= Tallest)
                {
                    spots.Add(At(curve[i].Travel, curve[i].Set));
                    continue;
                }

                if (i > 0)
                {
                    var (from, to) = (curve[i - 1], curve[i]);
                    var share = (Tallest - from.Set) / (to.Set - from.Set);
                    spots.Add(At(from.Travel + (share * (to.Travel - from.Travel)), Tallest));
                }

                break;
            }

            return spots;
        }

        public IEnumerable<Shape> Draw(PressWords words)
        {
            yield return new Shape.Line(At(0, 0), At(Widest, 0), Palette.Rule);
            yield return new Shape.Line(At(0, 0), At(0, Tallest), Palette.Rule);
            foreach (var x in Ticks(Widest, words))
            {
                yield return new Shape.Line(At(x, 0), At(x, 0).Moved(0, 4), Palette.Rule);
                yield return new Shape.Words(At(x, 0).Moved(0, 16), words.Number(x), Palette.Remark, Anchor.Middle);
            }

            foreach (var y in Ticks(Tallest, words))
            {
                yield return new Shape.Line(At(0, y), At(0, y).Moved(-4, 0), Palette.Rule);
                yield return new Shape.Words(At(0, y).Moved(-6, 4), words.Number(y), Palette.Remark, Anchor.End);
            }

            yield return new Shape.Words(
                new(Width - Right, Height - 6),
                Texts.Say("drawing.travel-set.travel-from-the-first-shape", words.Unit),
                Palette.Remark,
                Anchor.End
            );
            yield return new Shape.Words(new(2, 10), Texts.Say("drawing.travel-set.stayed"), Palette.Remark);
        }

        // Steps of 1, 2 or 5 times a power of ten in the unit shown.
        private static IEnumerable<double> Ticks(double range, PressWords words)
        {
            var wanted = range / words.UnitMetres / MostTicks;
            var power = Math.Pow(10, Math.Floor(Math.Log10(wanted)));
            var step = (wanted / power) switch
            {
                <= 1 => power,
                <= 2 => 2 * power,
                <= 5 => 5 * power,
                _ => 10 * power,
            };
            for (var tick = step; tick <= range / words.UnitMetres; tick += step)
            {
                yield return tick * words.UnitMetres;
            }
        }
    }
}
