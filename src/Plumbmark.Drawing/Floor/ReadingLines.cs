using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>What has been measured, what is doubted, and what to measure next.</summary>
internal static class ReadingLines
{
    // Beyond this many pale lines a drawing only turns grey.
    private const int MostMeasured = 120;
    private const int MostDoubted = 3;
    private const double LineHeight = 1.2; // of the letters' size

    /// <summary>A pale line for each length measured.</summary>
    public static IEnumerable<Shape> Measured(FloorScene scene)
    {
        var ends = scene
            .Car.StandingReadings.Where(r => r is Reading.Plan or Reading.Direct)
            .Select(r => r.Points.ToList())
            .Select(p => string.CompareOrdinal(p[0], p[1]) <= 0 ? (p[0], p[1]) : (p[1], p[0]))
            .Distinct()
            .ToList();
        return ends.Count > MostMeasured
            ? []
            : ends.Select(e => (From: scene.SpotOf(e.Item1), To: scene.SpotOf(e.Item2)))
                .Where(e => e.From is not null && e.To is not null)
                .Select(e => new Shape.Line(e.From!.Value, e.To!.Value, Palette.Measured));
    }

    /// <summary>The doubted readings and points, dashed, with the word.</summary>
    /// <param name="scene">What is drawn.</param>
    /// <param name="taken">Where words stand already; those written here are added.</param>
    public static IEnumerable<Shape> Doubted(FloorScene scene, List<Patch> taken)
    {
        var readings = scene.Car.Readings.DistinctBy(r => r.Id).ToDictionary(r => r.Id, StringComparer.Ordinal);
        foreach (var suspect in scene.Answer.Suspects.Take(MostDoubted))
        {
            var reading = suspect.Reading is { } id ? readings.GetValueOrDefault(id) : null;
            var points = reading?.Points.ToList() ?? (suspect.Point is { } point ? [point] : []);
            IReadOnlyList<string> name = suspect.Reading is { } doubted ? ["doubted", doubted] : ["doubted"];
            foreach (var shape in Along(scene, taken, points, Palette.Doubted, Palette.DoubtedWord, name, share: 0.36, suspect.Sentence))
            {
                yield return shape;
            }
        }
    }

    private static IEnumerable<HashSet<string>> DoubtedEnds(FloorScene scene)
    {
        var doubted = scene.Answer.Suspects.Take(MostDoubted).Select(s => s.Reading).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return scene.Car.Readings.Where(r => doubted.Contains(r.Id)).Select(r => r.Points.ToHashSet(StringComparer.Ordinal));
    }

    /// <summary>The next best reading, with the words.</summary>
    /// <param name="scene">What is drawn.</param>
    /// <param name="taken">Where words stand already; those written here are added.</param>
    public static IEnumerable<Shape> Next(FloorScene scene, List<Patch> taken)
    {
        if (scene.Answer.Next is not [var next, ..])
        {
            return [];
        }

        IReadOnlyList<string> points = next.Point is { } point ? [point] : [.. new[] { next.From, next.To }.OfType<string>()];
        if (DoubtedEnds(scene).Any(ends => ends.SetEquals(points)))
        {
            return []; // the doubted reading's own words say that it is to be taken again
        }

        var words = next.Kind switch
        {
            "height" => Texts.Say("drawing.reading-lines.next-its-height"),
            "drop" => Texts.Say("drawing.reading-lines.next-drop-again"),
            "rise" => Texts.Say("drawing.reading-lines.next-rise"),
            _ => Texts.Say("drawing.reading-lines.measure-next"),
        };
        return Along(scene, taken, points, Palette.Next, Palette.NextWord, [words], share: 0.58, next.Sentence);
    }

    private static IEnumerable<Shape> Along(
        FloorScene scene,
        List<Patch> taken,
        IReadOnlyList<string> points,
        Ink ink,
        Lettering lettering,
        IReadOnlyList<string> words,
        double share,
        string title
    )
    {
        var spots = points.Select(scene.SpotOf).OfType<Spot>().ToList();
        var group = new List<Shape>();
        if (spots.Count == 1)
        {
            var towardsMiddle = spots[0].X < scene.Options.Width / 2 ? 1 : -1;
            group.Add(new Shape.Circle(spots[0], 12, ink));
            var anchor = towardsMiddle > 0 ? Anchor.Start : Anchor.End;
            group.AddRange(Lines(spots[0].Moved(towardsMiddle * 16, 4), words, lettering, anchor, scene.Options.Width));
        }
        else if (spots.Count >= 2)
        {
            // An offset touches three: the string, and the point beside it.
            var (from, to) = (spots[^2], spots[^1]);
            group.Add(new Shape.Line(from, to, ink));
            if (spots.Count == 3)
            {
                group.Add(new Shape.Circle(spots[0], 12, ink));
            }

            var (at, hidden) = Clear(scene, taken, from, to, words, lettering, share);
            // On paper the sheet says it beside the drawing; words across the marks of points would only hide both.
            if (hidden == 0 || scene.Options.HasLegend)
            {
                taken.Add(Plates(at, words, lettering, scene.Options.Width));
                group.AddRange(Lines(at, words, lettering, Anchor.Middle, scene.Options.Width));
            }
        }

        return group.Count == 0 ? [] : [new Shape.Group(ink.Name, title, group)];
    }

    private static IEnumerable<Shape> Lines(Spot at, IReadOnlyList<string> words, Lettering lettering, Anchor anchor, double width)
    {
        for (var i = 0; i < words.Count; i++)
        {
            var line = new Shape.Words(
                at.Moved(0, (i - ((words.Count - 1) / 2.0)) * lettering.Size * LineHeight),
                words[i],
                lettering,
                anchor
            );
            foreach (var shape in Plate.Behind(Plate.Inside(line, width)))
            {
                yield return shape;
            }
        }
    }

    /// <summary>What the words of a line cover with their white ground.</summary>
    private static Patch Plates(Spot at, IReadOnlyList<string> words, Lettering lettering, double pictureWidth)
    {
        const double Edge = 4; // as far as Plate keeps words from the picture's side
        var width = words.Max(w => Plate.WidthOf(w, lettering));
        var left = Math.Clamp(at.X - (width / 2), Edge, Math.Max(Edge, pictureWidth - Edge - width));
        var tall = words.Count * lettering.Size * LineHeight / 2;
        return new Patch(left - 2, at.Y - 4 - tall, left + width + 2, at.Y - 4 + tall);
    }

    /// <summary>Where along a line, or inwards of it, the words hide no point and no other words: the wanted place, or the nearest to it that is as free as any.</summary>
    private static (Spot At, int Hidden) Clear(
        FloorScene scene,
        List<Patch> taken,
        Spot from,
        Spot to,
        IReadOnlyList<string> words,
        Lettering lettering,
        double wanted
    )
    {
        const int Places = 13; // every twentieth of the middle six tenths
        const double Mark = 9; // a point's mark
        var half = words.Max(w => Plate.WidthOf(w, lettering)) / 2;
        var tall = words.Count * lettering.Size * LineHeight / 2;
        Spot At(double share) => new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share) + 4);
        int Hidden(Spot at)
        {
            var plates = Plates(at, words, lettering, scene.Options.Width);
            return taken.Count(plates.Overlaps)
                + scene
                    .Seen.Select(scene.Figure.Drawn)
                    .Count(p => Math.Abs(p.X - at.X) < half + Mark && Math.Abs(p.Y - (at.Y - 4)) < tall + Mark);
        }

        // Along a rail there may be no room between the rail and the names beside it: then inwards of the line.
        var inwards = Math.Sign((scene.Options.Width / 2) - ((from.X + to.X) / 2)) * (half + Mark);
        return (
            from beside in new[] { 0, inwards }
            from i in Enumerable.Range(0, Places)
            let share = 0.2 + (0.05 * i)
            let at = At(share).Moved(beside, 0)
            let hidden = Hidden(at)
            orderby hidden, Math.Abs(beside), Math.Abs(share - wanted)
            select (at, hidden)
        ).First();
    }
}
