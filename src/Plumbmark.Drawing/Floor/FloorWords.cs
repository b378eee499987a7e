using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>Words and figures that the views of the frame share.</summary>
internal static class FloorWords
{
    public static string NameOf(CarFile car) =>
        car.Car.Name.Trim() is { Length: > 0 } name ? name : Texts.Say("drawing.floor.a-frame-without-a-name");

    /// <summary>What must find room beside the deviations: the smallest limit that any check has, and what the caller asks for.</summary>
    public static double RangeMetres(FloorAnswer answer, FloorDrawingOptions options)
    {
        var limit = answer.Checks.Select(c => c.LimitMetres ?? 0).Where(l => l > 0).DefaultIfEmpty(0).Min();
        return Math.Max(limit, options.LeastRangeMetres);
    }

    /// <summary>The drawing in sentences, for someone who cannot see it.</summary>
    public static string Describe(FloorScene scene)
    {
        var parts = new List<string> { scene.Answer.Overall.Headline };
        foreach (var sign in scene.Seen.GroupBy(PointSigns.Of).OrderBy(g => g.Key))
        {
            parts.Add($"{Capital(PointSigns.Words(sign.Key))}: {string.Join(", ", sign.Select(s => s.Id))}.");
        }

        return string.Join(' ', parts.Where(p => p.Length > 0));
    }

    /// <summary>A picture that only says why there is nothing to see.</summary>
    public static Picture Empty(FloorDrawingOptions options, string title, string sentence)
    {
        var lines = Wrapped.Lines(sentence, Palette.Remark, options.Width - 20).ToList();
        var shapes = lines.Select((line, i) => new Shape.Words(new Spot(10, 24 + (i * 17)), line, Palette.Remark));
        return new Picture(options.Width, 34 + (lines.Count * 17), title, sentence, [.. shapes]);
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
