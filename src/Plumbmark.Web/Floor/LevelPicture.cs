using System.Globalization;
using System.Net;
using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Levelling;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>The stands and the floor from above, front at the top and the car's left on the left: what goes under each stand, how high the floor is where it was read.</summary>
internal sealed class LevelPicture
{
    // In picture units, which are pixels on a phone 360 wide.
    private const double Width = 328;
    private const double Height = 320;
    private const double Margin = 52;

    private readonly CarFile _car;
    private readonly StringBuilder _svg = new();
    private readonly double _scale;
    private readonly double _middleX;
    private readonly double _middleY;

    private LevelPicture(CarFile car)
    {
        _car = car;
        var places = Places(car).ToList();
        var (front, rear) = (places.Max(p => p.X), places.Min(p => p.X));
        var half = Math.Max(0.2, places.Max(p => Math.Abs(p.Y)));
        _scale = Math.Min((Width - (2 * Margin)) / (2 * half), (Height - (2 * Margin)) / Math.Max(0.4, front - rear));
        (_middleX, _middleY) = ((front + rear) / 2, 0);
    }

    public static string Svg(CarFile car, LevellingAnswer answer) =>
        car.Level is not { } level || level.Stands.Count + level.Floor.Count == 0 ? "" : new LevelPicture(car).Draw(level, answer);

    private static IEnumerable<(double X, double Y)> Places(CarFile car) =>
        [
            .. car.Level!.Stands.Select(s => (s.X.Metres, s.Y.Metres)),
            .. car.Level.Floor.Select(f => (f.X.Metres, f.Y.Metres)),
            .. car
                .Frame.Points.Select(p => p.Sketch ?? p.Nominal)
                .Where(p => p is { X: not null, Y: not null })
                .Select(p => (p!.X!.Value.Metres, p.Y!.Value.Metres)),
        ];

    private string Draw(LevelSection level, LevellingAnswer answer)
    {
        var display = ShownLengths.Of(_car);
        _svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg class=\"level-picture\" viewBox=\"0 0 {N(Width)} {N(Height)}\" role=\"img\" aria-label=\"{E(Say("level.picture"))}\">"
        );
        Text(Width / 2, 16, Say("level.front"), "middle", "level-note");
        Rail(".L");
        Rail(".R");
        foreach (var place in level.Floor)
        {
            var (x, y) = At(place.X.Metres, place.Y.Metres);
            _svg.Append(
                CultureInfo.InvariantCulture,
                $"<rect class=\"level-floor\" x=\"{N(x - 5)}\" y=\"{N(y - 5)}\" width=\"10\" height=\"10\"/>"
            );
            Text(x, y + 20, display.Number(place.Height.Metres), "middle", "level-note");
        }

        foreach (var stand in level.Stands)
        {
            Stand(stand, answer, display);
        }

        return _svg.Append("</svg>").ToString();
    }

    private void Stand(StandReading stand, LevellingAnswer answer, Engine.Lengths.LengthDisplay display)
    {
        var (x, y) = At(stand.X.Metres, stand.Y.Metres);
        var advice = answer.Stands.FirstOrDefault(s => s.Id == stand.Id);
        var words =
            advice is { RaiseMetres: > 0 } raised && display.Rounded(raised.RaiseMetres) > Engine.Lengths.Length.Zero
                ? $"+ {display.Text(raised.RaiseMetres)}"
            : advice is not null ? Say("level.leave")
            : Say("level.just-touch");
        var style = advice is null ? "level-stand is-last" : "level-stand";
        _svg.Append(
            CultureInfo.InvariantCulture,
            $"<path class=\"{style}\" d=\"M{N(x - 13)} {N(y + 11)}L{N(x)} {N(y - 12)}L{N(x + 13)} {N(y + 11)}Z\"/>"
        );
        // Inside the picture on both sides, whatever the stand is called.
        var (labelX, anchor) = x < Width / 2 ? (Math.Min(x, 40) - 36, "start") : (Math.Max(x, Width - 40) + 36, "end");
        Text(labelX, y + 28, stand.Id, anchor, "level-name");
        Text(labelX, y + 46, words, anchor, "level-raise");
    }

    private void Rail(string side)
    {
        var places = _car
            .Frame.Points.Where(p => p.Id.EndsWith(side, StringComparison.Ordinal))
            .Select(p => p.Sketch ?? p.Nominal)
            .Where(p => p is { X: not null, Y: not null })
            .OrderByDescending(p => p!.X!.Value.Metres)
            .Select(p => At(p!.X!.Value.Metres, p.Y!.Value.Metres));
        _svg.Append(
            CultureInfo.InvariantCulture,
            $"<polyline class=\"picker-rail\" points=\"{string.Join(' ', places.Select(p => $"{N(p.X)},{N(p.Y)}"))}\"/>"
        );
    }

    private void Text(double x, double y, string words, string anchor, string style) =>
        _svg.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"{style}\" x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\">{E(words)}</text>"
        );

    /// <summary>Forward is up the page, left is left.</summary>
    private (double X, double Y) At(double xMetres, double yMetres) =>
        ((Width / 2) - ((yMetres - _middleY) * _scale), (Height / 2) - ((xMetres - _middleX) * _scale));

    private static string E(string text) => WebUtility.HtmlEncode(text);

    private static string N(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
